import { Link } from 'wouter'
import { agreementPage as words } from '#content/wording/app-agreement.ts'
import { authorityRefusals } from '#core/agreement/authority.ts'
import type { Conversation } from '#core/agreement/conversation.ts'
import { Choices } from '../../../design/choices.tsx'
import { Notice } from '../../../design/notice.tsx'
import { TextField } from '../../../design/text-field.tsx'
import { contactsHref } from '../case-hrefs.ts'
import { useCaseView } from '../case-view.ts'
import { Choose } from './choose.tsx'
import { Part } from './part.tsx'
import type { Talk } from './use-talk.ts'

const authorities = ['owner', 'joint-owner', 'authorised', 'guardian', 'sitter', 'somebody-else'] as const
const cannot: ReadonlySet<string> = new Set(authorityRefusals)

/** Who agrees on what authority. Who cannot is told at once, with what would make it possible. */
export function WhoPart({ talk }: { readonly talk: Talk }) {
  const { id } = useCaseView()
  const { talk: said, put, contacts, faults } = talk
  const refused = faults.filter(({ part, code }) => part === 'who' && cannot.has(code))
  return (
    <Part name="who" talk={talk} saidAbove={refused.map(({ code }) => words.faults[code])}>
      <Choose
        label={words.consentBy}
        help={words.consentByHelp}
        value={said.consentBy}
        options={contacts}
        onChoose={(consentBy) => put({ consentBy })}
      />
      <p data-screen-only>
        <Link href={contactsHref(id)}>{words.people}</Link>
      </p>
      <Choices
        legend={words.authority}
        value={said.authority === 'for-the-owner' ? null : said.authority}
        options={authorities}
        say={(one) => words.authorityOf[one]}
        onChoose={(authority) => put({ authority })}
      />
      {said.authority === 'authorised' && <AuthorisedPart talk={talk} />}
      {refused.length > 0 && (
        <Notice tone="warn" title={words.cannot} live>
          {refused.map(({ code }) => (
            <p key={code}>{words.faults[code]}</p>
          ))}
        </Notice>
      )}
      <Choices
        legend={words.soundMind}
        value={said.soundMind}
        options={['yes', 'no']}
        say={(one) => words.soundMinds[one]}
        onChoose={(soundMind) => put({ soundMind })}
      />
    </Part>
  )
}

function AuthorisedPart({ talk }: { readonly talk: Talk }) {
  const { talk: said, put, contacts, staff } = talk
  const { authorised } = said
  const change = (part: Partial<Conversation['authorised']>) => put({ authorised: { ...authorised, ...part } })
  const labels = words.authorised
  return (
    <>
      <Choose label={labels.by} value={authorised.by} options={contacts} onChoose={(by) => change({ by })} />
      <Choices
        legend={labels.how}
        value={authorised.how}
        options={['in-writing', 'by-phone']}
        say={(one) => labels.hows[one]}
        onChoose={(how) => change({ how })}
      />
      <TextField
        label={labels.when}
        help={labels.whenHelp}
        value={authorised.when}
        onText={(when) => change({ when })}
      />
      <TextField
        label={labels.until}
        help={labels.untilHelp}
        value={authorised.until}
        onText={(until) => change({ until })}
      />
      <TextField
        label={labels.upTo}
        help={labels.upToHelp}
        value={authorised.upTo}
        onText={(upTo) => change({ upTo })}
      />
      <Choose
        label={labels.witness}
        value={authorised.witness}
        options={staff}
        none={words.noWitness}
        onChoose={(witness) => change({ witness })}
      />
    </>
  )
}
