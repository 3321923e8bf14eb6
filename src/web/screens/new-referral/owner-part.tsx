import { useMemo } from 'react'
import { referralInEnglish } from '#content/wording/app-referral.ts'
import { fill } from '#core/outcome/finding.ts'
import type { CallFault } from '#core/referral/first-call.ts'
import { type KnownOwner, knownOwners } from '#core/referral/known-owners.ts'
import { TextField } from '../../design/text-field.tsx'
import type { Lists } from '../../journal/database.ts'
import { Part, type PartProps } from './part.tsx'
import styles from './screen.module.css'
import type { CaseMatch } from './write-call.ts'

const words = referralInEnglish.owner
const mostShown = 4

export function OwnerPart(
  props: PartProps & {
    readonly faults: readonly CallFault[]
    readonly cases: Lists['cases']
    readonly same: CaseMatch | null
  },
) {
  const { call, put, faults, cases, same } = props
  const { ownerName, ownerPhone } = call
  const owners = useMemo(() => knownOwners(cases, { ownerName, ownerPhone }), [cases, ownerName, ownerPhone])
  if (same) return null
  const phone = call.ownerPhone || words.noPhone
  if (call.knownOwner) {
    return (
      <Part title={words.title}>
        <p>{fill(words.using, { name: call.ownerName, phone })}</p>
        <p>
          <button type="button" onClick={() => put({ knownOwner: null, ownerName: '', ownerPhone: '' })}>
            {words.other}
          </button>
        </p>
      </Part>
    )
  }
  const use = ({ contact, household, name, phone }: KnownOwner) =>
    put({ knownOwner: { contact, household }, ownerName: name, ownerPhone: phone ?? '' })
  return (
    <Part title={words.title}>
      <div className={styles.pair}>
        <TextField
          label={words.name}
          autoComplete="off"
          maxLength={300}
          value={call.ownerName}
          onText={(text) => put({ ownerName: text })}
        />
        <TextField
          label={words.phone}
          type="tel"
          autoComplete="off"
          maxLength={300}
          value={call.ownerPhone}
          onText={(text) => put({ ownerPhone: text })}
        />
      </div>
      <Known owners={owners.slice(0, mostShown)} use={use} />
      <TextField
        label={words.language}
        help={words.languageHelp}
        error={faults.includes('no-language') ? referralInEnglish.faults['no-language'] : null}
        className={styles.short}
        autoComplete="off"
        value={call.language}
        onText={(text) => put({ language: text.trim() })}
      />
    </Part>
  )
}

function Known(props: { readonly owners: readonly KnownOwner[]; readonly use: (owner: KnownOwner) => void }) {
  const { owners, use } = props
  return (
    <div aria-live="polite" className={owners.length > 0 ? styles.known : undefined}>
      {owners.length > 0 && (
        <>
          <p>{words.known}</p>
          <ul className="bare">
            {owners.map((owner) => (
              <li key={owner.contact} className="row">
                <button type="button" onClick={() => use(owner)}>
                  {fill(words.use, { name: owner.name, phone: owner.phone ?? words.noPhone })}
                </button>
                <span className="soft">{fill(words.of, { animals: owner.animals.join(', ') })}</span>
              </li>
            ))}
          </ul>
        </>
      )}
    </div>
  )
}
