import { checked, facts, heading, list, type Paper, paragraph, small, strong, text } from './model.ts'

/** Text as a spiteful or careless person types it; every rendering must show it literally. */
export const hostile = [
  '#include "x"',
  '#panic("out")',
  '<script>alert(1)</script>',
  '$x$ and $ sum_(i=0) $',
  '*_\\ `raw` @ref <label> ~ -- /* */ //',
  '😀 שלום مرحبا',
  'Ω'.repeat(300),
  '&amp; " \' ]]>',
] as const

/** A paper with every block and every hostile text in every place a person's words can reach. */
export const samplePaper: Paper = checked({
  id: 'sample',
  title: `Sample ${hostile[0]}`,
  language: 'en-GB',
  about: `Bramble ${hostile[1]}`,
  date: '12 February 2026',
  at: '2026-02-12T10:00:00.000Z',
  from: `Invented Practice ${hostile[7]}`,
  caution: 'Decision support for licensed veterinary professionals.',
  provenance: 'case:0001, 3 entries',
  print: 'ordinary',
  blocks: [
    heading(1, `First ${hostile[2]}`),
    paragraph([text('Some words, '), strong(hostile[3]), small(` and ${hostile[4]}`)]),
    list([hostile[5], 'second item']),
    { kind: 'list', numbered: true, items: ['first', hostile[4]] },
    { kind: 'list', numbered: false, language: 'es', items: ['lo que se dijo ese día'] },
    heading(2, 'Second'),
    {
      kind: 'table',
      caption: `Medicines ${hostile[4]}`,
      columns: [
        { head: 'Drug', align: 'left', share: 2 },
        { head: 'Volume', align: 'right', weight: 'strong' },
      ],
      rowHeader: true,
      rows: [
        [hostile[2], '1.6 mL'],
        [hostile[6], '0.25 mL'],
      ],
    },
    facts(['Weight', '8.2 kg'], [hostile[0], hostile[4]]),
    { kind: 'callout', tone: 'stop', word: 'Stop', lines: [hostile[1]] },
    { kind: 'callout', tone: 'attention', word: 'Please note', lines: ['attention'], items: ['one thing', hostile[2]] },
    { kind: 'callout', tone: 'calm', word: 'Good to know', lines: ['calm'] },
    { kind: 'big', text: '1.6 mL', note: 'of 5 mg/mL' },
    { kind: 'signatures', lines: ['Surgeon', hostile[0]] },
    {
      kind: 'picture',
      svg: '<svg xmlns="http://www.w3.org/2000/svg" width="40" height="20" viewBox="0 0 40 20" role="img"><title>LEFT EAR</title><path d="M0 0L40 20" stroke="#000"/></svg>',
      alt: `A line that falls to the right ${hostile[4]}`,
      caption: `Drawn for ${hostile[2]}`,
    },
    {
      kind: 'labels',
      labels: [
        { name: hostile[2], big: '1.6 mL', of: 'of 5 mg/mL', lines: [hostile[4]], blanks: ['Prepared by'] },
        { name: 'second label', big: hostile[5], of: hostile[4], lines: [], blanks: [hostile[3]] },
      ],
    },
    { kind: 'page-break' },
    heading(3, 'Third'),
    paragraph('The end.'),
  ],
})
