/**
 * Rows as CSV (RFC 4180): CRLF, quotes doubled, one header. A cell that a spreadsheet would run as a formula gets an
 * apostrophe in front; that alters the cell, so the lossless export is the journal file and this is for spreadsheets.
 */
export function sheet(header: readonly string[], rows: readonly (readonly string[])[]): string {
  return [header, ...rows].map((row) => `${row.map(cell).join(',')}\r\n`).join('')
}

function cell(text: string): string {
  const safe = /^[=+\-@\t\r]/.test(text) ? `'${text}` : text
  return /[",\r\n]/.test(safe) || safe !== text ? `"${safe.replaceAll('"', '""')}"` : safe
}
