import { referralInEnglish } from '#content/wording/app-referral.ts'
import { Choices } from '../../design/choices.tsx'
import { Part, type PartProps } from './part.tsx'

const words = referralInEnglish.caller
const callers = ['owner', 'referring-vet', 'other'] as const

export function CallerPart({ call, put }: PartProps) {
  return (
    <Part title={words.title}>
      <Choices
        legend={words.who}
        value={call.caller}
        options={callers}
        say={(one) => words.callers[one]}
        onChoose={(caller) => put({ caller })}
      />
    </Part>
  )
}
