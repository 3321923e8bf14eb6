/** A plain table for people: columns as wide as their widest cell, numbers are the caller's business. */
export function table(header: readonly string[], rows: readonly (readonly string[])[]): string {
  const widths = header.map((cell, column) => Math.max(cell.length, ...rows.map((row) => (row[column] ?? '').length)))
  const line = (row: readonly string[]) =>
    row
      .map((cell, column) => cell.padEnd(widths[column] ?? 0))
      .join('  ')
      .trimEnd()
  return [line(header), line(widths.map((width) => '-'.repeat(width))), ...rows.map(line)]
    .map((text) => `${text}\n`)
    .join('')
}

/** `8.2 mg`; units in the words of a label where UCUM brackets would puzzle a reader. */
export function amount(quantity: { readonly value: number; readonly unit: string } | null | undefined): string {
  if (!quantity) return '–'
  const unit = quantity.unit
    .replace(/[{}]/g, '')
    .replace('[lb_av]', 'lb')
    .replace('mm[Hg]', 'mmHg')
    .replace('[drp]', 'drops')
    .replace('[iU]', 'IU')
  return `${quantity.value} ${unit}`
}
