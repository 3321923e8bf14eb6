import { owedScreen } from '#content/wording/app-lists.ts'
import { matchInEnglish } from '#content/wording/app-match.ts'
import { referralInEnglish } from '#content/wording/app-referral.ts'
import { fill } from '#core/outcome/finding.ts'
import { sayCount } from '#core/outcome/say-count.ts'
import type { MatchAnswer } from '#core/referral/first-call.ts'
import { Choices } from '../../design/choices.tsx'
import { TextField } from '../../design/text-field.tsx'
import { caseHref } from '../../journal/hrefs.ts'
import type { PartProps } from './part.tsx'
import styles from './screen.module.css'
import type { CaseMatch } from './write-call.ts'

const words = referralInEnglish.matches
const answers = ['same', 'another'] as const
const mostShown = 4
export const matchesId = 'matches'

/** Files that may be this animal, with why and why not. Only a person says that one is. */
export function MatchesPart({ call, put, matches }: PartProps & { readonly matches: readonly CaseMatch[] }) {
  const likely = matches.filter(({ strength }) => strength === 'likely')
  const shown = [...likely, ...matches.filter((match) => !likely.includes(match)).slice(0, mostShown)]
  const say = (stream: string, answer: MatchAnswer) => {
    // Only one file can be the same animal.
    const others = Object.entries(call.matches).filter(
      ([one, { answer: said }]) => one !== stream && said !== answer.answer,
    )
    const kept = answer.answer === 'same' ? Object.fromEntries(others) : call.matches
    put({ matches: { ...kept, [stream]: answer } })
  }
  return (
    <div id={matchesId} tabIndex={-1} aria-live="polite" className={styles.matches}>
      {shown.length > 0 && <h2 className={styles.heading}>{sayCount(words.title, shown.length)}</h2>}
      {shown.map((match) => (
        <OneMatch key={match.row.stream} match={match} said={call.matches[match.row.stream]} say={say} />
      ))}
      {shown.length > 0 && <p className="soft">{matchInEnglish.never}</p>}
    </div>
  )
}

function OneMatch(props: {
  readonly match: CaseMatch
  readonly said: MatchAnswer | undefined
  readonly say: (stream: string, answer: MatchAnswer) => void
}) {
  const { match, said, say } = props
  const { row, strength, reasons, doubts } = match
  const about = {
    name: row.name,
    species: owedScreen[row.species === 'cat' ? 'cat' : 'dog'],
    owner: row.ownerName ?? words.unknown,
    phone: row.ownerPhone ?? words.unknown,
    chip: row.chip ?? words.unknown,
  }
  return (
    <div className={styles.match} data-strength={strength}>
      <p className={styles.strength}>{matchInEnglish.strengths[strength]}</p>
      <p>{fill(words.row, about)}</p>
      <p>{fill(matchInEnglish.because, { reasons: reasons.map((one) => matchInEnglish.reasons[one]).join(', ') })}</p>
      {doubts.length > 0 && (
        <p>{fill(matchInEnglish.against, { doubts: doubts.map((one) => matchInEnglish.doubts[one]).join(', ') })}</p>
      )}
      <p>
        <a href={caseHref(row.stream)} target="_blank" rel="noreferrer">
          {fill(words.open, { name: row.name })}
        </a>
      </p>
      <Choices
        legend={words.question}
        value={said?.answer ?? null}
        options={answers}
        say={(one) => words.answers[one]}
        onChoose={(answer) => say(row.stream, { answer, because: said?.because ?? '' })}
      />
      {said?.answer === 'another' && (
        <TextField
          label={words.how}
          help={words.howHelp}
          autoComplete="off"
          maxLength={1000}
          value={said.because}
          onText={(text) => say(row.stream, { ...said, because: text })}
        />
      )}
    </div>
  )
}
