/** Without what was not told. */
export function tidied(value: Readonly<Record<string, unknown>>): Readonly<Record<string, unknown>> {
  return Object.fromEntries(Object.entries(value).filter(([, each]) => each !== undefined));
}
