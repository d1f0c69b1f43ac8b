/** The file of rules that is tried; `npm run mutants` puts it in place. */
declare module 'own-family';
