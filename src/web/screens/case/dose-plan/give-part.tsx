import { type FormEvent, useState } from 'react'
import { Link } from 'wouter'
import { dosePlanInEnglish } from '#content/wording/app-dose-plan.ts'
import type { LineNow } from '#core/dosing/plan-now.ts'
import { readQuantityText } from '#core/forms/read-leaf.ts'
import type { BodyOf } from '#core/journal/fold.ts'
import { fill } from '#core/outcome/finding.ts'
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

/** What was to be drawn, as an amount a person may say was given; null where the line has none. */
function wholeOf({ now }: LineNow): Pick<Given, 'amount' | 'volume'> | null {
  if (!now || now.verdict === 'refused') return null
  const { drawn, rate, dilution, tablets } = now
  // A diluted, infused or cut amount is said in words of its own: it is not one draw of the bottle.
  if (rate || dilution || tablets) return null
  const unit = amountUnits.find((one) => one === now.amount.unit)
  if (drawn) return { amount: drawn.toJSON(), volume: drawn.toJSON() }
  return unit ? { amount: { value: now.amount.toJSON().value, unit } as Given['amount'], volume: null } : null
}

/** A planned line is written down as given: all of it with one tap more, or whatever it really was. */
export function GivePart({ line, onClose }: { readonly line: LineNow; readonly onClose: () => void }) {
  const { file, id } = useCaseView()
  const { pen, clinic } = useWho()
  const [how, setHow] = useState<'all' | 'other' | null>(null)
  const [typed, setTyped] = useState('')
  const [site, setSite] = useState('')
  const [ampoule, setAmpoule] = useState('')
  const [tries, setTries] = useState(0)
  const form = useFaultFocus(tries)
  const { entry, now } = line
  const whole = wholeOf(line)
  const read = readQuantityText(typed, amountUnits, { decimalMark: clinic.row.decimalMark })
  const amount = read.kind === 'answer' ? (read.answer as unknown as Given['amount']) : null
  const other = amount && { amount, volume: amount.unit === 'mL' ? { value: amount.value, unit: amount.unit } : null }
  const given = (whole ? how : 'other') === 'all' ? whole : how === 'other' || !whole ? other : null
  const { route } = entry.body
  const keep = async (event: FormEvent) => {
    event.preventDefault()
    setTries(tries + 1)
    if (!given || route === null) return
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
        line: entry.body.line,
        batch: null,
        ampoule: ampoule.trim() || null,
      },
    })
    onClose()
  }
  const drug = drugName(entry.body.drug)
  const drawn = now && now.verdict !== 'refused' ? (now.drawn ?? now.amount) : null
  return (
    <Modal title={fill(words.title, { drug })} close={words.close} onClose={onClose}>
      <form ref={form} className="stack" onSubmit={(event) => void keep(event)} noValidate>
        <p>{words.help}</p>
        {route === null ? (
          <p>{words.noRoute}</p>
        ) : (
          <>
            {whole && drawn && (
              <Choices
                legend={words.how}
                value={how}
                options={['all', 'other'] as const}
                error={tries > 0 && how === null ? words.missing : null}
                say={(one) =>
                  one === 'all'
                    ? fill(words.all, { drawn: sayAmount(drawn), amount: now ? amountOf(now) : '' })
                    : words.other
                }
                onChoose={setHow}
              />
            )}
            {(how === 'other' || !whole) && (
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

function amountOf(now: NonNullable<LineNow['now']>): string {
  return now.verdict === 'refused' ? '' : sayAmount(now.amount)
}
