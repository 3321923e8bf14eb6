import { useState } from 'react'
import { referralInEnglish } from '#content/wording/app-referral.ts'
import { speciesList } from '#core/animal/species.ts'
import { chipDigits } from '#core/identity/chips.ts'
import { fill } from '#core/outcome/finding.ts'
import { sayCount } from '#core/outcome/say-count.ts'
import type { CallFault } from '#core/referral/first-call.ts'
import { Choices } from '../../design/choices.tsx'
import { Notice } from '../../design/notice.tsx'
import { TextField } from '../../design/text-field.tsx'
import { matchesId } from './matches-part.tsx'
import { Part, type PartProps } from './part.tsx'
import styles from './screen.module.css'
import type { CaseMatch } from './write-call.ts'

const words = referralInEnglish.animal
const { faults: faultWords, matches: matchWords } = referralInEnglish
const sexes = ['female', 'male', 'unknown'] as const
const yesNo = ['yes', 'no', 'unknown'] as const

export function AnimalPart(
  props: PartProps & {
    readonly faults: readonly CallFault[]
    readonly matches: readonly CaseMatch[]
    readonly same: CaseMatch | null
  },
) {
  const { call, put, faults, matches, same } = props
  const open = matches.filter(({ strength, row }) => strength === 'likely' && !call.matches[row.stream])
  const bornFault = faults.find((fault) => fault === 'born-unreadable' || fault === 'born-day-or-month-first')
  const digits = chipDigits(call.chip)
  // While somebody is still typing, nothing is wrong yet.
  const [typing, setTyping] = useState<'chip' | 'born' | null>(null)
  return (
    <Part title={words.title}>
      {same && <Notice>{fill(matchWords.added, { name: same.row.name })}</Notice>}
      <div className={styles.pair}>
        <TextField
          label={words.name}
          autoComplete="off"
          maxLength={300}
          value={call.name}
          onText={(text) => put({ name: text })}
        />
        <Choices
          legend={words.species}
          value={call.species}
          options={speciesList}
          say={(one) => words[one]}
          onChoose={(species) => put({ species })}
        />
      </div>
      <div className={styles.pair}>
        <TextField
          label={words.chip}
          help={words.chipHelp}
          error={typing === 'chip' ? null : chipFault(faults, digits)}
          inputMode="numeric"
          autoComplete="off"
          onFocus={() => setTyping('chip')}
          onBlur={() => setTyping(null)}
          value={call.chip}
          onText={(text) => put({ chip: text })}
        />
        <TextField
          label={words.born}
          help={words.bornHelp}
          error={typing === 'born' ? null : bornFault && faultWords[bornFault]}
          autoComplete="off"
          onFocus={() => setTyping('born')}
          onBlur={() => setTyping(null)}
          value={call.born}
          onText={(text) => put({ born: text })}
        />
      </div>
      {open.length > 0 && (
        // The files themselves stand below the owner, whose name and phone are compared too.
        <p className={styles.likely}>
          <a href={`#${matchesId}`}>{sayCount(matchWords.likely, open.length)}</a>
        </p>
      )}
      <TextField
        label={words.breed}
        autoComplete="off"
        maxLength={300}
        value={call.breed}
        onText={(text) => put({ breed: text })}
      />
      <div className={styles.flags}>
        <Choices
          inline
          legend={words.flatFace}
          value={call.flatFace}
          options={yesNo}
          say={(one) => words.yesNo[one]}
          onChoose={(flatFace) => put({ flatFace })}
        />
        <Choices
          inline
          legend={words.sex}
          value={call.sex}
          options={sexes}
          say={(one) => words.sexes[one]}
          onChoose={(sex) => put({ sex })}
        />
        <Choices
          inline
          legend={words.neutered}
          value={call.neutered}
          options={yesNo}
          say={(one) => words.yesNo[one]}
          onChoose={(neutered) => put({ neutered })}
        />
      </div>
    </Part>
  )
}

function chipFault(faults: readonly CallFault[], digits: string): string | null {
  if (!faults.includes('chip-not-15-digits')) return null
  return fill(faultWords['chip-not-15-digits'], { count: String(digits.length) })
}
