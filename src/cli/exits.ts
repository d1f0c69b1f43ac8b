/** How the command line ends. */
export const EXIT = {
  /** Drawn, or checked without a danger. */
  good: 0,
  /** Checked, with a danger. */
  danger: 1,
  /** The plan, or the command, cannot be read. */
  unreadable: 2,
  /** A mistake of ours. */
  ourFault: 3,
  /** What was made could not be written: no room, no permission, a closed pipe. */
  unwritable: 4,
} as const;

/** What the user can mend: shown as it is, without a trace. */
export class Unreadable extends Error {}

/** What was made has nowhere to go: one line, without a trace. */
export class Unwritable extends Error {}
