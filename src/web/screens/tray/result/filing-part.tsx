import { cultureInEnglish } from '#content/wording/app-culture.ts'
import { takeInResultInEnglish } from '#content/wording/app-take-in-result.ts'
import type { Case } from '#core/journal/fold.ts'
import type { Filing } from '#core/laboratory/filing.ts'
import { fill } from '#core/outcome/finding.ts'
import type { Acted } from '#core/owed/specimen-loop.ts'
import { Notice } from '../../../design/notice.tsx'
import { sayWhen } from '../../../design/say-when.ts'
import { usePeople } from '../../../session/use-people.ts'
import { useWho } from '../../../session/use-who.ts'

const { filing: words, statuses } = takeInResultInEnglish

/** What filing would do to a case that has this report already, and who had acted on the one that it replaces. */
export function FilingPart({ filing, theCase }: { readonly filing: Filing; readonly theCase: Case }) {
  switch (filing.kind) {
    case 'new':
      return null
    case 'already-here':
      return <Notice title={words.already} />
    case 'older-than-filed':
      return <Notice tone="warn" title={fill(words.older, { status: statuses[filing.result.body.status] })} />
    case 'other-specimen': {
      const label = theCase.live('specimen').find(({ header }) => header.id === filing.result.body.specimen)?.body.label
      return <Notice tone="warn" title={fill(words.otherTube, { label: label ?? filing.result.body.specimen })} />
    }
    case 'supersedes': {
      const [before] = filing.results
      return (
        <Notice tone="warn" title={fill(words.supersedes, { status: statuses[before?.body.status ?? 'final'] })}>
          {filing.acted.length > 0 && (
            <>
              <p>{words.acted}</p>
              <ul>
                {filing.acted.map((acted) => (
                  <ActedLine key={acted.line.header.id} acted={acted} />
                ))}
              </ul>
            </>
          )}
        </Notice>
      )
    }
  }
}

function ActedLine({ acted: { what, line } }: { readonly acted: Acted }) {
  const { nameOf } = usePeople()
  const { pen } = useWho()
  const { author } = line.header
  const who = author.kind === 'person' ? nameOf(author.person) : author.kind
  return <li>{fill(cultureInEnglish.report.actedOn[what], { who, when: sayWhen(line.at, pen.zone) })}</li>
}
