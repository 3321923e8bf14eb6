import type { CountedRows } from '#actions/antibiogram/antibiogram.ts'
import { antibiogramInEnglish as words } from '#content/wording/antibiogram.ts'
import { caution } from '#content/wording/caution.ts'
import { fill } from '#core/outcome/finding.ts'
import { sayCount } from '#core/outcome/say-count.ts'
import { besideOf, shareOf } from '#documents/what-grows/say-drug.ts'
import { table } from './table.ts'

type Organism = CountedRows['organisms'][number]

/** The table for people at a terminal. */
export function antibiogramText(answer: CountedRows): string {
  const list = Object.entries(answer.rows.leftOut)
    .map(([why, count]) => `${words.leftOut[why as keyof typeof words.leftOut]} ${count}`)
    .join(', ')
  const read = String(answer.rows.read)
  const lines = [
    ...answer.method.text,
    list === '' ? fill(words.noneLeftOut, { read }) : fill(words.leftOutOf, { read, list }),
    ...answer.notes.map(({ text }) => text),
    caution,
  ]
  return [...answer.organisms.map((organism) => tableOf(organism, answer)), `${lines.join('\n')}\n`].join('\n')
}

function tableOf(organism: Organism, { method }: Pick<CountedRows, 'method'>): string {
  const { host, site, n, flag, drugs, fallback } = organism
  const flagged = flag === null ? '' : ` (${fill(words.flag, { flagBelow: String(method.flagBelow) })})`
  const title = `${[words.hosts[host], ...(site === null ? [] : [site]), organism.organism].join(', ')}: ${sayCount(words.isolates, n)}${flagged}\n`
  const { columns } = words
  const about = { ...method, fewInAll: flag !== null }
  const header = [columns.drug, columns.counted, columns.share, columns.interval, columns.beside]
  const rows = drugs.map((drug) => [drug.name, ...shareOf(drug), besideOf(drug, about).join(', ')])
  const borrowed = fallback.map((drug) => [drug.name, ...shareOf(drug), besideOf(drug, about).join(', ')])
  const apart = borrowed.length === 0 ? '' : `${words.fallback}\n${table(header, borrowed)}`
  return `${title}${table(header, rows)}${apart}`
}
