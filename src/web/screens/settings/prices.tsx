import { type FormEvent, useState } from 'react'
import { formRefusals } from '#content/wording/app-form-refusals.ts'
import { settingsInEnglish, registersInEnglish as words } from '#content/wording/app-settings.ts'
import { readDecimal, readText } from '#core/forms/read-leaf.ts'
import { fill } from '#core/outcome/finding.ts'
import { Decimal } from '#core/units/quantity.ts'
import { Modal } from '../../design/modal.tsx'
import { ReadingView } from '../../design/reading-view.tsx'
import { TextField } from '../../design/text-field.tsx'
import { useHouse } from '../../journal/cases.ts'
import { newId } from '../../journal/device.ts'
import { useDraft } from '../../journal/drafts.ts'
import { useWho } from '../../session/use-who.ts'
import { DoingNote, useDoing } from './doing.tsx'
import { SettingsPage } from './frame.tsx'
import { useRefusal } from './may.ts'
import { putRow } from './register-rows.ts'
import styles from './settings.module.css'
import { type Price, type Standing, standing } from './standing.ts'

/** What an estimate is put together from. */
export function PricesScreen() {
  const reading = useHouse()
  const refusal = useRefusal(['manager', 'desk'], true)
  const [opened, setOpened] = useState<Standing<Price> | 'new' | null>(null)
  return (
    <SettingsPage
      part="prices"
      actions={
        <button type="button" data-weight="main" disabled={refusal !== null} onClick={() => setOpened('new')}>
          {words.price.add}
        </button>
      }
    >
      {refusal && <p className="soft">{refusal}</p>}
      <ReadingView reading={reading}>
        {({ rows }) => {
          const prices = [...standing(rows, 'price')].sort((a, b) => (a.body.label < b.body.label ? -1 : 1))
          return (
            <>
              {prices.length === 0 && <p>{words.price.none}</p>}
              <ul className={`bare ${styles.lines}`}>
                {prices.map((price) => (
                  <li key={price.id} className={styles.line}>
                    <div>
                      <p className={styles.name}>{price.body.label}</p>
                      <p>{sayPrice(price.body)}</p>
                    </div>
                    <button type="button" disabled={refusal !== null} onClick={() => setOpened(price)}>
                      {settingsInEnglish.change}
                      <span className="said"> {price.body.label}</span>
                    </button>
                  </li>
                ))}
              </ul>
            </>
          )
        }}
      </ReadingView>
      {opened && <PriceForm price={opened === 'new' ? null : opened} onClose={() => setOpened(null)} />}
    </SettingsPage>
  )
}

function sayPrice({ low, high, currency }: Price): string {
  return fill(low === high ? words.price.same : words.price.range, { low, high, currency })
}

type Draft = { readonly label: string; readonly low: string; readonly high: string }

function PriceForm({ price, onClose }: { readonly price: Standing<Price> | null; readonly onClose: () => void }) {
  const { me, clinic } = useWho()
  const { decimalMark, currency } = clinic.row
  const shown = (text: string) => text.replace('.', decimalMark)
  const { draft, change, clear } = useDraft<Draft>(`price ${price?.id ?? 'new'}`, me.id, () => ({
    label: price?.body.label ?? '',
    low: shown(price?.body.low ?? ''),
    high: shown(price?.body.high ?? ''),
  }))
  const [tried, setTried] = useState(false)
  const { doing, run, fail, working } = useDoing()
  const read = {
    label: readText(draft.label, 300),
    low: readDecimal(draft.low, { decimalMark }),
    high: readDecimal(draft.high, { decimalMark }),
  }
  const errorOf = (field: keyof Draft) => {
    const one = read[field]
    return tried && one.kind === 'refusal' ? fill(formRefusals[one.refusal.because], one.refusal.about) : null
  }
  const put = async (body: Price | null) => {
    const done = await run(async () => {
      await putRow('price', price?.id ?? newId(), body)
      return settingsInEnglish.saved
    })
    if (!done) return
    await clear()
    onClose()
  }
  const submit = (event: FormEvent) => {
    event.preventDefault()
    setTried(true)
    const { label, low, high } = read
    if (label.kind === 'refusal' || low.kind === 'refusal' || high.kind === 'refusal') return
    const [least, most] = [String(low.answer), String(high.answer)]
    if (new Decimal(most).lt(least)) return fail(words.price.backwards)
    void put({ label: String(label.answer), low: least, high: most, currency: price?.body.currency ?? currency })
  }
  return (
    <Modal title={price ? words.price.change : words.price.add} close={settingsInEnglish.cancel} onClose={onClose}>
      <form onSubmit={submit} className="stack" noValidate>
        <p className="soft">{fill(words.price.currency, { currency: price?.body.currency ?? currency })}</p>
        {(['label', 'low', 'high'] as const).map((field) => (
          <TextField
            key={field}
            label={words.price[field]}
            error={errorOf(field)}
            inputMode={field === 'label' ? 'text' : 'decimal'}
            autoComplete="off"
            value={draft[field]}
            onText={(text) => change({ ...draft, [field]: text })}
          />
        ))}
        <DoingNote doing={doing} />
        <div className="row">
          <button type="submit" data-weight="main" disabled={working}>
            {working ? settingsInEnglish.saving : settingsInEnglish.save}
          </button>
          {price && (
            <button
              type="button"
              disabled={working}
              onClick={() => confirm(fill(words.removeSure, { what: price.body.label })) && void put(null)}
            >
              {words.remove}
            </button>
          )}
        </div>
      </form>
    </Modal>
  )
}
