import { Link } from 'wouter'
import { registerLine } from '#content/wording/app-forms/register-line.ts'
import { registerInEnglish as words } from '#content/wording/app-register.ts'
import type { Case } from '#core/journal/fold.ts'
import { fill } from '#core/outcome/finding.ts'
import { sayCount } from '#core/outcome/say-count.ts'
import type { Register } from '#core/register/register.ts'
import type { RegisterFinding } from '#core/register/register-findings.ts'
import { sayMoment } from '#core/time/moment.ts'
import { caseHref } from '../../journal/hrefs.ts'
import styles from './page.module.css'

type Props = {
  readonly register: Register
  readonly theFold: Case
  readonly nameOf: (stream: string) => string
}

/** What is to be settled, and apart from it what is only to be known; each names its line, or the animal it stands with. */
export function Findings(props: Props) {
  const { findings } = props.register
  const open = findings.filter(({ level }) => level !== 'note')
  const notes = findings.filter(({ level }) => level === 'note')
  return (
    <section aria-labelledby="register-findings" className={styles.findings}>
      <h2 id="register-findings">{open.length > 0 ? sayCount(words.open, open.length) : words.nothingOpen}</h2>
      <List {...props} findings={open} />
      {notes.length > 0 && <h3>{words.toKnow}</h3>}
      <List {...props} findings={notes} />
    </section>
  )
}

function List({ findings, ...props }: Props & { readonly findings: readonly RegisterFinding[] }) {
  if (findings.length === 0) return null
  return (
    <ul>
      {findings.map((finding) => (
        <li key={`${finding.code} ${finding.entry}`} data-level={finding.level}>
          <AboutWhat entry={finding.entry} {...props} /> {fill(words.said[finding.code], finding.about)}
        </li>
      ))}
    </ul>
  )
}

function AboutWhat({ entry, register, theFold, nameOf }: Props & { readonly entry: string | null }) {
  if (entry === null) return null
  const at = register.lines.findIndex((line) => line.entry.header.id === entry)
  const line = register.lines[at]
  if (line) {
    const what = registerLine.fields.what.options[line.entry.body.what]
    return <a href={`#line-${at + 1}`}>{fill(words.ofLine, { number: String(at + 1), what })}</a>
  }
  const other = theFold.line(entry)
  if (!other) return null
  const { stream, happenedAt } = other.header
  return (
    <Link href={caseHref(stream)}>{fill(words.ofAnimal, { animal: nameOf(stream), when: sayMoment(happenedAt) })}</Link>
  )
}
