/** One record of comma-separated values, its line end with it. Source: RFC 4180, section 2. */
export function csvLine(fields: readonly string[]): string {
  return `${fields.map(quoted).join(',')}\r\n`;
}

/** What a spreadsheet would take for a formula is made text by a blank before it. */
function quoted(field: string): string {
  const plain = /^[=+\-@\t\r]/.test(field) ? ` ${field}` : field;
  return /[",\r\n]/.test(plain) ? `"${plain.replaceAll('"', '""')}"` : plain;
}
