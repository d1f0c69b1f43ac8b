/** Where no one file of rules is tried: every case is. */
export {};
