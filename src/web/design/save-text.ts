/** Puts a text into the downloads of this device. The clipboard is closed to a page without TLS; this is not. */
export function saveText(title: string, text: string, kind: 'txt' | 'csv' | 'hl7' = 'txt'): void {
  const address = URL.createObjectURL(
    new Blob([text], { type: `text/${kind === 'csv' ? 'csv' : 'plain'};charset=utf-8` }),
  )
  const link = document.createElement('a')
  link.href = address
  link.download = `${title.replaceAll(/[^\p{L}\p{N}]+/gu, '-')}.${kind}`
  link.click()
  URL.revokeObjectURL(address)
}
