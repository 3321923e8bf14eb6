import { susceptibility } from '#content/susceptibility/index.ts'
import { takeInResultInEnglish as words } from '#content/wording/app-take-in-result.ts'
import { agentPrinted, organismPrinted } from '#core/laboratory/recognised.ts'
import type { LaboratoryReport, ReportedDrug } from '#core/laboratory/report.ts'
import { termOf } from '#core/laboratory/terms.ts'
import type { Answers } from '#core/laboratory/to-result.ts'
import { fill } from '#core/outcome/finding.ts'
import styles from './result.module.css'

const nameOf = (list: readonly { readonly id: string; readonly name: string }[], id: string | null) =>
  list.find((one) => one.id === id)?.name ?? null

/** What a report holds, as printed, with what each name is taken for. Nothing is read of it here. */
export function IsolatesPart({ report, answers }: { readonly report: LaboratoryReport; readonly answers: Answers }) {
  return (
    <>
      {report.isolates.map(({ key, organism, code, amount, drugs, tests }) => {
        const id = organismPrinted(organism, code, susceptibility).id ?? termOf(answers.organisms, organism)
        return (
          <div key={key}>
            <p>
              <span className={styles.organism}>
                {amount === null ? organism : fill(words.isolate, { organism, amount })}
              </span>{' '}
              <span className="soft">{saidOf(nameOf(susceptibility.organisms, id), organism)}</span>
            </p>
            <ul className={styles.drugs}>
              {drugs.map((drug, place) => (
                // biome-ignore lint/suspicious/noArrayIndexKey: a drug may stand twice, and lines never move.
                <li key={place}>
                  {sayDrug(drug)} <span className="soft">{sayTaken(drug, answers)}</span>
                </li>
              ))}
              {tests.map(({ test, result }) => (
                <li key={test}>{fill(words.tests, { test, result })}</li>
              ))}
            </ul>
          </div>
        )
      })}
      {report.text.length > 0 && (
        <details>
          <summary>{words.text}</summary>
          {report.text.map((line) => (
            <p key={line}>{line}</p>
          ))}
        </details>
      )}
    </>
  )
}

function sayDrug({ drug, value, unit, category }: ReportedDrug): string {
  const printed = value === null ? '' : `${value}${unit === null ? '' : ` ${unit}`}`
  const said = category === null ? '' : fill(words.laboratorySays, { category })
  const both = [printed, said].filter((part) => part !== '').join(', ')
  return fill(words.drugLine, { drug, value: both })
}

function sayTaken({ drug, code }: ReportedDrug, answers: Answers): string {
  const id = agentPrinted(drug, code, susceptibility).id ?? termOf(answers.agents, drug)
  return saidOf(nameOf(susceptibility.agents, id), drug)
}

/** Silent where it is printed as we write it ourselves. */
function saidOf(name: string | null, printed: string): string {
  if (name === null) return words.untaken
  return name.toLowerCase() === printed.toLowerCase() ? '' : fill(words.taken, { name })
}
