import { type FormEvent, useState } from 'react'
import { Link } from 'wouter'
import { dosePlanInEnglish } from '#content/wording/app-dose-plan.ts'
import type { LineNow } from '#core/dosing/plan-now.ts'
import { readQuantityText } from '#core/forms/read-leaf.ts'
import type { BodyOf } from '#core/journal/fold.ts'
import { isAbout } from '#core/journal/lines-about.ts'
import { fill } from '#core/outcome/finding.ts'
import { lacksBaseline } from '#core/theatre/stamp-gates.ts'
import { sayAmount } from '#core/why/why.ts'
import { drugName } from '#documents/case/drug-name.ts'
import { Caution } from '../../../design/caution.tsx'
import { Choices } from '../../../design/choices.tsx'
import { Modal } from '../../../design/modal.tsx'
import { TextField } from '../../../design/text-field.tsx'
import { writeEntry } from '../../../journal/write-entry.ts'
import { useWho } from '../../../session/use-who.ts'
import { writeHref } from '../case-hrefs.ts'
import { useCaseView } from '../case-view.ts'
import { useFaultFocus } from '../use-fault-focus.ts'

const words = dosePlanInEnglish.give
type Given = BodyOf<'drug-given'>
const amountUnits = ['mg', 'ug', 'mL', '[iU]', 'mmol', '{tablet}', 'mg/kg/h', 'ug/kg/h', 'mL/h', '%{vol}'] as const

/** Uses after which face and eyes can no longer be judged. */
const sedates: ReadonlySet<string> = new Set(['premed', 'sedation'])

/** What was to be drawn, as an amount a person may say was given; null where the line has none. */
function wholeOf({ now }: LineNow): Pick<Given, 'amount' | 'volume'> | null {
  if (!now || now.verdict === 'refused') return null
  const { drawn, rate, dilution, tablets } = now
  if (tablets) return { amount: tablets.each.toJSON(), volume: null }
  // A diluted or infused amount is said in words of its own: it is not one draw of the bottle.
  if (rate || dilution) return null
  const unit = amountUnits.find((one) => one === now.amount.unit)
  if (drawn) return { amount: drawn.toJSON(), volume: drawn.toJSON() }
  return unit ? { amount: { value: now.amount.toJSON().value, unit } as Given['amount'], volume: null } : null
}

/** The loading dose of an infusion, which still waits when it was given. */
function loadingOf({ now }: LineNow): Pick<Given, 'amount' | 'volume'> | null {
  const loading = now && now.verdict !== 'refused' ? now.loading : undefined
  const unit = amountUnits.find((one) => one === loading?.amount.unit)
  if (!loading?.drawn || !unit) return null
  const amount = { value: loading.amount.toJSON().value, unit } as Given['amount']
  return { amount, volume: loading.drawn.toJSON() }
}

/** A planned line is written down as given: all of it with one tap more, or whatever it really was. */
export function GivePart({ line, onClose }: { readonly line: LineNow; readonly onClose: () => void }) {
  const { file, id, operations } = useCaseView()
  const { pen, clinic } = useWho()
  const [how, setHow] = useState<How | null>(null)
  const [typed, setTyped] = useState('')
  const [site, setSite] = useState('')
  const [ampoule, setAmpoule] = useState('')
  const [because, setBecause] = useState('')
  const [tries, setTries] = useState(0)
  const form = useFaultFocus(tries)
  const { entry } = line
  const whole = wholeOf(line)
  const read = readQuantityText(typed, amountUnits, { decimalMark: clinic.row.decimalMark })
  const amount = read.kind === 'answer' ? (read.answer as unknown as Given['amount']) : null
  const other = amount && { amount, volume: amount.unit === 'mL' ? { value: amount.value, unit: amount.unit } : null }
  const loading = loadingOf(line)
  const options = (['all', 'loading', 'other'] as const).filter(
    (one) => (one !== 'all' || whole) && (one !== 'loading' || loading),
  )
  const asked = options.length > 1 ? how : 'other'
  const given = asked === 'all' ? whole : asked === 'loading' ? loading : asked === 'other' ? other : null
  const { route } = entry.body
  const operation = operations.find((one) => isAbout(entry, one.id))
  const tooEarly =
    operation !== undefined &&
    sedates.has(entry.body.use) &&
    lacksBaseline(operation, { operations, theCase: file.theCase, now: new Date().toISOString() })
  const keep = async (event: FormEvent) => {
    event.preventDefault()
    setTries(tries + 1)
    if (!given || route === null || (tooEarly && because.trim() === '')) return
    await writeEntry(pen, {
      kind: 'drug-given',
      stream: file.stream,
      subject: entry.header.subject,
      body: {
        drug: entry.body.drug,
        written: null,
        ...given,
        route,
        site: site.trim() || null,
        use: entry.body.use,
        // The infusion itself still waits: only its loading dose is in.
        line: asked === 'loading' ? null : entry.body.line,
        batch: null,
        ampoule: ampoule.trim() || null,
      },
      reason: because.trim() || null,
    })
    onClose()
  }
  const drug = drugName(entry.body.drug)
  return (
    <Modal title={fill(words.title, { drug })} close={words.close} onClose={onClose}>
      <form ref={form} className="stack" onSubmit={(event) => void keep(event)} noValidate>
        <p>{words.help}</p>
        {route === null ? (
          <p>{words.noRoute}</p>
        ) : (
          <>
            {options.length > 1 && (
              <Choices
                legend={words.how}
                value={how}
                options={options}
                error={tries > 0 && how === null ? words.missing : null}
                say={(one) => sayHow(one, line)}
                onChoose={setHow}
              />
            )}
            {asked === 'other' && (
              <TextField
                label={words.otherAmount}
                help={words.otherHelp}
                error={tries > 0 && !other ? words.wrong : null}
                autoComplete="off"
                value={typed}
                onText={setTyped}
              />
            )}
            <TextField
              label={words.site}
              help={words.siteHelp}
              maxLength={300}
              autoComplete="off"
              value={site}
              onText={setSite}
            />
            <TextField
              label={words.ampoule}
              help={words.ampouleHelp}
              maxLength={300}
              autoComplete="off"
              value={ampoule}
              onText={setAmpoule}
            />
            {tooEarly && (
              <TextField
                label={words.baseline}
                help={words.baselineHelp}
                error={tries > 0 && because.trim() === '' ? words.baselineMissing : null}
                autoComplete="off"
                value={because}
                onText={setBecause}
              />
            )}
            <p>
              <button type="submit" data-weight="main">
                {words.verb}
              </button>
            </p>
          </>
        )}
        <p>
          <Link href={writeHref(id, 'drug-given', { subject: entry.header.subject })}>{words.otherwise}</Link>
        </p>
        <Caution />
      </form>
    </Modal>
  )
}

type How = 'all' | 'loading' | 'other'

function sayHow(how: How, { now }: LineNow): string {
  if (how === 'other' || !now || now.verdict === 'refused') return words.other
  const { loading } = now
  if (how === 'loading') {
    const taken = loading?.drawn ? sayAmount(loading.drawn) : ''
    return fill(words.loading, { drawn: taken, amount: loading ? sayAmount(loading.amount) : '' })
  }
  const drawn = now.tablets?.each ?? now.drawn ?? now.amount
  return fill(words.all, { drawn: sayAmount(drawn), amount: sayAmount(now.amount) })
}
