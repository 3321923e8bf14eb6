import { agreementPage as words } from '#content/wording/app-agreement.ts'
import { Choices } from '../../../design/choices.tsx'
import { TextField } from '../../../design/text-field.tsx'
import { Part } from './part.tsx'
import type { Talk } from './use-talk.ts'

/** What to do if the heart stops, if more is needed, and with photos. */
export function LimitsPart({ talk }: { readonly talk: Talk }) {
  const { talk: said, put } = talk
  return (
    <Part name="limits" talk={talk}>
      <Choices
        legend={words.resuscitate}
        value={said.resuscitate}
        options={['yes', 'only-drugs', 'no', 'not-decided']}
        say={(one) => words.resuscitates[one]}
        onChoose={(resuscitate) => put({ resuscitate })}
      />
      <Choices
        legend={words.mayExtend}
        value={said.mayExtend}
        options={['yes', 'phone-first', 'no']}
        say={(one) => words.mayExtends[one]}
        onChoose={(mayExtend) => put({ mayExtend })}
      />
      {said.mayExtend !== null && said.mayExtend !== 'no' && (
        <TextField label={words.extension} value={said.extension} onText={(extension) => put({ extension })} />
      )}
      <Choices
        legend={words.photographs}
        value={said.photographs}
        options={['record-only', 'teaching', 'no']}
        say={(one) => words.photographsSaid[one]}
        onChoose={(photographs) => put({ photographs })}
      />
    </Part>
  )
}
