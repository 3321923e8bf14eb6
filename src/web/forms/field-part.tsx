import { isRecord, textIn } from '#core/forms/draft.ts'
import { isRelevant } from '#core/forms/relevant.ts'
import { wordsAt } from '#core/forms/words.ts'
import { never } from '#core/outcome/outcome.ts'
import { ChoicePart, ManyPart, Option, RowsPart } from './choice-parts.tsx'
import { DetailsPart } from './details-part.tsx'
import { LabelledFrame, type Part, useTold } from './field-frame.tsx'
import styles from './forms.module.css'
import { GroupPart, ListPart } from './group-parts.tsx'
import { useScope } from './scope.ts'
import { SubjectPart } from './subject-part.tsx'
import { FreeSelectPart, SelectPart, TextPart, worded } from './text-parts.tsx'

/** One field of a form, by the control that answers it. A field that is not asked is not there. */
export function FieldPart(part: Part) {
  const { field, group } = part
  const { words, choices } = useScope()
  if (!isRelevant(field, group)) return null
  const { control } = field
  const own = wordsAt(words, field.at) ?? { label: field.at }
  switch (control.kind) {
    case 'choice':
      return <ChoicePart {...part} options={control.options} />
    case 'yes-no':
      return <ChoicePart {...part} options={['yes', 'no']} />
    case 'select':
    case 'suggested':
      return <SelectPart {...part} options={worded(control.options, own)} />
    case 'many':
      return <ManyPart {...part} options={worded(control.options, own)} />
    case 'entries':
      return <ManyPart {...part} options={choices.entries(control.kinds)} />
    case 'many-from-register':
      return <ManyPart {...part} options={choices.registers[control.register] ?? []} />
    case 'entry':
      return <SelectPart {...part} options={choices.entries(control.kinds)} />
    case 'from-register': {
      const options = choices.registers[control.register]
      if (!options) return <TextPart {...part} />
      return control.free ? <FreeSelectPart {...part} options={options} /> : <SelectPart {...part} options={options} />
    }
    case 'rows':
      return <RowsPart {...part} rows={control.rows} answers={control.answers} />
    case 'group':
      return <GroupPart {...part} fields={control.fields} drawField={drawField} />
    case 'list':
      return <ListPart {...part} fields={control.fields} drawField={drawField} />
    case 'tick':
      return <TickPart {...part} />
    case 'details':
      return <DetailsPart {...part} checkpoint={textIn(isRecord(group) ? group.checkpoint : undefined)} />
    case 'subject':
      return <SubjectPart {...part} />
    case 'carried':
      return <CarriedPart {...part} />
    case 'answered-by':
    case 'plan-fingerprint':
      return null
    case 'text':
    case 'long-text':
    case 'lines':
    case 'whole-number':
    case 'decimal':
    case 'money':
    case 'moment':
    case 'day':
    case 'time-of-day':
    case 'times':
    case 'quantity':
    case 'body-weight':
      return <TextPart {...part} />
    default:
      return never(control)
  }
}

function drawField(part: Part) {
  return <FieldPart {...part} />
}

/** One thing that is marked where it applies; left alone it does not. */
function TickPart(part: Part) {
  const { set } = useScope()
  const told = useTold(part)
  const chosen = part.draft === true
  return (
    <div className={styles.field}>
      <div className={styles.options}>
        <Option
          kind="checkbox"
          id={told.id}
          word={told.words.label}
          chosen={chosen}
          onChoose={() => set(part.path, !chosen)}
        />
      </div>
    </div>
  )
}

/** Made elsewhere; where its words say so, it is shown, so that nobody looks for it. */
function CarriedPart(part: Part) {
  const told = useTold(part)
  if (!told.words.help && !told.error) return null
  return (
    <LabelledFrame field={part.field} told={told}>
      <output id={told.id} />
    </LabelledFrame>
  )
}
