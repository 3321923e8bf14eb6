import { useState } from 'react'
import { Link } from 'wouter'
import { formulary } from '#content/formulary/index.ts'
import { cultureInEnglish } from '#content/wording/app-culture.ts'
import { formRefusals } from '#content/wording/app-form-refusals.ts'
import { routeWords } from '#content/wording/app-form-words.ts'
import type { CultureOption, Way } from '#core/culture/option.ts'
import { type CourseDraft, emptyCourse, readCourse } from '#core/culture/read-course.ts'
import { rowsFor } from '#core/dosing/read-chosen.ts'
import type { DrawnLine, PlannedLine } from '#core/dosing/request.ts'
import { type DoseRow, drugById, rowKey } from '#core/formulary/drug.ts'
import { capital } from '#core/outcome/capital.ts'
import { fill } from '#core/outcome/finding.ts'
import { addDays, dayOf, sayCalendarDay } from '#core/time/calendar-day.ts'
import { sayAmount } from '#core/why/why.ts'
import { Choices } from '../../../design/choices.tsx'
import { Field } from '../../../design/field.tsx'
import { TextField } from '../../../design/text-field.tsx'
import { useMinute } from '../../../journal/use-minute.ts'
import { sayProduct } from '../../settings/say-product.ts'
import { writeHref } from '../case-hrefs.ts'
import { useCaseView } from '../case-view.ts'
import { sayTake } from '../dose-plan/say-line.ts'
import { FindingList } from '../finding-list.tsx'
import styles from './results.module.css'

const words = cultureInEnglish.course

/** What a course would be: dose by a person, product of the shelf, days; counted by the dose engine, and kept nowhere. */
export function CoursePart(props: {
  readonly option: CultureOption
  readonly onLine: (line: PlannedLine | null) => void
}) {
  const { option, onLine } = props
  const { file, id } = useCaseView()
  const species = file.theCase.latest('identity')?.body.species
  const drug = drugById(formulary, option.drug ?? '')
  const [key, setKey] = useState(option.ways.length === 1 ? (option.ways[0]?.row ?? null) : null)
  const [draft, setDraft] = useState<CourseDraft>(emptyCourse)
  const rows = species ? rowsFor(drug, species) : []
  const row = rows.find((one) => rowKey(one) === key)
  const way = option.ways.find((one) => one.row === key)
  const { decimalMark } = file.clinic
  const shelf = file.house.live('shelf-item').map(({ body }) => body)
  const change = (next: CourseDraft, chosen: string | null = key) => {
    setDraft(next)
    const at = rows.find((one) => rowKey(one) === chosen)
    const [route] = at?.routes ?? []
    if (!at || !drug) return onLine(null)
    const asked: PlannedLine = {
      id: `course of ${drug.id}`,
      drug: drug.id,
      use: at.use,
      ...(route && { route }),
      ...(at.qualifier && { qualifier: at.qualifier }),
      ...(at.formulation && { formulation: at.formulation }),
    }
    onLine(readCourse(next, asked, at, shelf, decimalMark).line)
  }
  const fault = (field: keyof CourseDraft) => {
    const refusal = row && way && readCourse(draft, way.asked, row, shelf, decimalMark).refusals[field]
    return refusal ? fill(formRefusals[refusal.because], refusal.about) : null
  }
  const products = shelf.filter((one) => one.drug === option.drug && one.strength !== null)
  return (
    <div className={styles.course} data-screen-only>
      <p className="soft">{words.lead}</p>
      {option.ways.length > 1 && (
        <Choices
          legend={words.way}
          value={key}
          options={option.ways.map((one) => one.row)}
          say={(one) => sayRow(option.ways.find((each) => each.row === one))}
          onChoose={(one) => {
            setKey(one)
            change({ ...draft, dose: '' }, one)
          }}
        />
      )}
      {row && (
        <>
          <div className={styles.fields}>
            <TextField
              label={words.dose}
              help={sayRange(row)}
              error={fault('dose')}
              autoComplete="off"
              value={draft.dose}
              onText={(dose) => change({ ...draft, dose })}
            />
            <Field label={words.product} help={products.length === 0 ? words.productLacks : undefined}>
              {(control) => (
                <select
                  {...control}
                  value={draft.item}
                  onChange={(event) => change({ ...draft, item: event.target.value })}
                >
                  <option value="">{words.productNone}</option>
                  {products.map((one) => (
                    <ProductOption key={one.item} product={one} />
                  ))}
                </select>
              )}
            </Field>
            <TextField
              label={words.every}
              help={fill(words.everyHelp, { interval: row.interval.value.words })}
              error={fault('every')}
              inputMode="numeric"
              value={draft.every}
              onText={(every) => change({ ...draft, every })}
            />
            <TextField
              label={words.days}
              help={words.daysHelp}
              error={fault('days')}
              inputMode="numeric"
              value={draft.days}
              onText={(days) => change({ ...draft, days })}
            />
          </div>
          <Worked way={way} label={products.find(({ item }) => item === draft.item)?.label ?? null} />
          <p>
            <Link href={writeHref(id, 'medicine-change')}>{words.change}</Link>
          </p>
        </>
      )}
    </div>
  )
}

function ProductOption({ product }: { readonly product: Parameters<typeof sayProduct>[0] }) {
  const { file } = useCaseView()
  const now = useMinute()
  return <option value={product.item}>{sayProduct(product, dayOf({ at: now, zone: file.clinic.zone }))}</option>
}

function sayRange({ range: { value } }: DoseRow): string {
  const about = { low: sayAmount(value.low), high: sayAmount(value.high) }
  return fill(value.low.value.eq(value.high.value) ? words.doseHelpOne : words.doseHelp, about)
}

function sayRow(way: Way | undefined): string {
  if (!way) return ''
  return [way.line.route ? routeWords[way.line.route] : '', way.asked.qualifier ?? '', way.asked.formulation ?? '']
    .filter(Boolean)
    .join(', ')
}

/** What each dose is, how many leave the clinic, and the last day; or why it cannot be given so. */
function Worked({ way, label }: { readonly way: Way | undefined; readonly label: string | null }) {
  if (!way || way.asked.days === undefined) {
    return (
      <p className="soft" role="status">
        {words.incomplete}
      </p>
    )
  }
  const { line } = way
  return (
    <div role="status">
      {line.verdict === 'refused' ? (
        <p>
          <strong>{words.refused}</strong>
        </p>
      ) : (
        <Leaves line={line} days={way.asked.days} label={label} />
      )}
      <FindingList findings={line.findings} />
    </div>
  )
}

function Leaves(props: { readonly line: DrawnLine; readonly days: number; readonly label: string | null }) {
  const { line, days, label } = props
  const { file } = useCaseView()
  const now = useMinute()
  const today = dayOf({ at: now, zone: file.clinic.zone })
  const last = sayCalendarDay(addDays(today, days - 1))
  const about = { each: capital(sayTake(line)), product: label ?? '', interval: line.interval ?? '' }
  return (
    <p className={styles.leaves}>
      {fill(label === null ? words.eachOther : words.each, about)}.{' '}
      {line.dispense
        ? fill(words.total, { days: String(days), total: sayAmount(line.dispense.amount), last })
        : `${words.noTotal} ${fill(words.stop, { last })}`}
    </p>
  )
}
