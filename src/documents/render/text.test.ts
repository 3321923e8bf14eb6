import { expect, test } from 'vitest'
import { checked, heading, paragraph } from './model.ts'
import { hostile, samplePaper } from './sample-for-tests.ts'
import { renderText } from './text.ts'

test('What a person typed stands literally in the plain text', () => {
  const rendered = renderText(samplePaper)
  for (const typed of hostile) expect(rendered).toContain(typed)
})

test('A table that fits is set in columns with numbers to the right', () => {
  const rendered = renderText({
    ...samplePaper,
    blocks: [
      {
        kind: 'table',
        caption: 'Medicines',
        columns: [
          { head: 'Drug', align: 'left' },
          { head: 'Volume', align: 'right' },
        ],
        rowHeader: true,
        rows: [
          ['bupivacaine', '1.6 mL'],
          ['methadone', '0.25 mL'],
        ],
      },
    ],
  })
  expect(rendered).toContain(
    ['Medicines', 'Drug          Volume', '-----------  -------', 'bupivacaine   1.6 mL', 'methadone    0.25 mL'].join(
      '\n',
    ),
  )
})

test('A control character never reaches a terminal', () => {
  const rendered = renderText({ ...samplePaper, blocks: [paragraph('before\u001b[31mafter\u0000')] })
  expect(rendered).toContain('before\ufffd[31mafter\ufffd')
  expect(rendered).not.toContain('\u001b')
})

test('The caution is printed when there is one and not when there is none', () => {
  expect(renderText(samplePaper)).toContain('Decision support')
  expect(renderText({ ...samplePaper, caution: null })).not.toContain('Decision support')
})

test('A heading that skips a level is a bug of the paper', () => {
  expect(() => checked({ ...samplePaper, blocks: [heading(1, 'One'), heading(3, 'Three')] })).toThrow('skips a level')
  expect(() => checked({ ...samplePaper, blocks: [heading(2, 'Two')] })).toThrow('skips a level')
})

test('A row that does not fill its columns is a bug of the paper', () => {
  const table = samplePaper.blocks.find((block) => block.kind === 'table')
  if (!table) throw new Error('The sample has a table.')
  expect(() => checked({ ...samplePaper, blocks: [{ ...table, rows: [['only one']] }] })).toThrow('does not fill')
})

test('A picture is printed as its description', () => {
  const blocks = [{ kind: 'picture' as const, svg: '<svg/>', alt: 'A line that falls.', caption: 'The LEFT ear' }]
  expect(renderText({ ...samplePaper, blocks })).toContain('[The LEFT ear]\nA line that falls.')
})
