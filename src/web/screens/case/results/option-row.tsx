import { useState } from 'react'
import { cultureInEnglish } from '#content/wording/app-culture.ts'
import { routeWords } from '#content/wording/app-form-words.ts'
import { optionWords } from '#content/wording/culture-options.ts'
import type { CultureOption, Way } from '#core/culture/option.ts'
import { sayWhyOf } from '#core/culture/say-option.ts'
import type { PlannedLine } from '#core/dosing/request.ts'
import { capital } from '#core/outcome/capital.ts'
import { fill } from '#core/outcome/finding.ts'
import { sayAmount } from '#core/why/why.ts'
import { Provenance } from '../../../design/provenance.tsx'
import { FindingList } from '../finding-list.tsx'
import { CoursePart } from './course-part.tsx'
import styles from './results.module.css'

const words = cultureInEnglish.options

/** One drug: whether it can be used and why, in what dose, and what it could do to this animal. */
export function OptionRow(props: {
  readonly option: CultureOption
  readonly onLine: (line: PlannedLine | null) => void
}) {
  const { option, onLine } = props
  const [open, setOpen] = useState(false)
  const { why, whyNot } = sayWhyOf(option, optionWords)
  const { ways, tier, verdict, inAnimal } = option
  const mayWork = ways.length > 0
  if (verdict === 'cannot') return <Barred option={option} sentences={whyNot} />
  return (
    <li className={styles.option} data-verdict={verdict}>
      <h4>{capital(option.name)}</h4>
      <dl className={styles.said}>
        {why.length > 0 && <Said name={words.why} sentences={why} />}
        {whyNot.length > 0 && <Said name={verdict === 'doubt' ? words.open : words.whyNot} sentences={whyNot} />}
        <div>
          <dt>{words.tier}</dt>
          <dd className={styles.fact}>
            <span>{tier ? optionWords.tiers[tier.value.category] : optionWords.noTier}</span>
            {tier && <Provenance fact={tier} />}
          </dd>
        </div>
        {ways.length > 0 && <Doses ways={ways} />}
        {ways.length > 0 && <Harms option={option} />}
        {inAnimal.length > 0 && (
          <div>
            <dt>{words.inAnimal}</dt>
            <dd>
              <FindingList findings={inAnimal} />
            </dd>
          </div>
        )}
      </dl>
      {mayWork && (
        <p data-screen-only>
          <button
            type="button"
            aria-expanded={open}
            aria-label={open ? undefined : fill(words.workOutSaid, { drug: option.name })}
            onClick={() => {
              if (open) onLine(null)
              setOpen(!open)
            }}
          >
            {open ? words.close : words.workOut}
          </button>
        </p>
      )}
      {open && mayWork && <CoursePart option={option} onLine={onLine} />}
    </li>
  )
}

/** Why it cannot be used, and nothing beside it: a place in an order of preference would read as advice. */
function Barred({ option, sentences }: { readonly option: CultureOption; readonly sentences: readonly string[] }) {
  const { name, inAnimal } = option
  return (
    <li className={styles.option} data-verdict="cannot">
      <h4>{capital(name)}</h4>
      {sentences.map((sentence) => (
        <p key={sentence}>{sentence}</p>
      ))}
      {inAnimal.length > 0 && <FindingList findings={inAnimal} />}
    </li>
  )
}

function Said({ name, sentences }: { readonly name: string; readonly sentences: readonly string[] }) {
  return (
    <div>
      <dt>{name}</dt>
      <dd>
        {sentences.map((sentence) => (
          <p key={sentence}>{sentence}</p>
        ))}
      </dd>
    </div>
  )
}

/** The known range of each way; a dose only where the house chose one. */
function Doses({ ways }: { readonly ways: readonly Way[] }) {
  return (
    <div>
      <dt>{words.dose}</dt>
      <dd>
        {ways.map(({ row, line }) => (
          <p key={row} className={styles.fact}>
            <span>{sayWay(line)}</span>
            {line.sources[0] && <Provenance fact={line.sources[0]} />}
          </p>
        ))}
      </dd>
    </div>
  )
}

function sayWay(line: Way['line']): string {
  const { range, interval = '', route, dose, chosenBy } = line
  if (!range) return ''
  const about = {
    route: route ? routeWords[route] : '',
    low: sayAmount(range.low),
    high: sayAmount(range.high),
    interval,
  }
  const said = capital(fill(range.low.value.eq(range.high.value) ? words.wayOne : words.way, about))
  return dose && chosenBy?.kind === 'policy' ? `${said}; ${fill(words.wayChosen, { dose: sayAmount(dose) })}` : said
}

function Harms({ option: { harms } }: { readonly option: CultureOption }) {
  return (
    <div>
      <dt>{words.harms}</dt>
      <dd>
        {harms.length === 0 ? (
          <p className="soft">{words.noHarms}</p>
        ) : (
          <ul className={styles.facts}>
            {harms.map((harm) => (
              <li key={harm.value}>
                <span className={styles.fact}>
                  <span>{harm.value}</span>
                  <Provenance fact={harm} />
                </span>
              </li>
            ))}
          </ul>
        )}
      </dd>
    </div>
  )
}
