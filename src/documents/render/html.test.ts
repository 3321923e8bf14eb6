import { expect, test } from 'vitest'
import { renderHtml } from './html.ts'
import { hostile, samplePaper } from './sample-for-tests.ts'

const page = renderHtml(samplePaper)

/** What a browser would show: tags taken out, entities read. */
function shown(html: string): string {
  const entities: Record<string, string> = { '&lt;': '<', '&gt;': '>', '&quot;': '"', '&#39;': "'", '&amp;': '&' }
  return html
    .replaceAll(/<style>[\s\S]*?<\/style>/g, '')
    .replaceAll(/<[^>]*>/g, '')
    .replaceAll(/&(lt|gt|quot|#39|amp);/g, (entity) => entities[entity] ?? entity)
}

test('What a person typed is shown literally and never becomes markup', () => {
  for (const typed of hostile) expect(shown(page)).toContain(typed)
  expect(page).not.toContain('<script')
  expect(page).not.toContain('<label>')
})

test('The page needs no script and no other file', () => {
  expect(page).not.toMatch(/<(script|link|img|iframe|object)|url\(|@import|https?:/)
})

test('The language, the headings in order and the heads of tables are real', () => {
  expect(page).toContain('<html lang="en-GB">')
  expect([...page.matchAll(/<h(\d)/g)].map((match) => match[1])).toEqual(['1', '2', '3', '4'])
  expect(page).toContain('<caption>Medicines')
  expect(page.match(/<th scope="col"/g)).toHaveLength(2)
  expect(page.match(/<th scope="row"/g)).toHaveLength(2)
})

test('A tone is said in words', () => {
  expect(page).toContain('<aside class="stop" aria-label="Stop"><p class="word">Stop</p>')
  expect(page).toContain('<aside class="attention" aria-label="Please note"><p class="word">Please note</p>')
})

test('The caution stands in the foot that is repeated on every printed page', () => {
  expect(page).toMatch(/<footer><p class="caution">Decision support/)
})

test('A picture stands in the page as a drawing with its caption, and names no other address', () => {
  expect(page).toContain('<figure class="picture"><svg width="40"')
  expect(page).toMatch(/<figcaption dir="auto">Drawn for &lt;script&gt;/)
})
