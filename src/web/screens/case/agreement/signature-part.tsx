import { agreementPage as words } from '#content/wording/app-agreement.ts'
import { settledBySigning } from '#core/agreement/conversation.ts'
import { Choices } from '../../../design/choices.tsx'
import styles from './agreement.module.css'
import { Choose } from './choose.tsx'
import { Part } from './part.tsx'
import type { Talk } from './use-talk.ts'

/** How consent is given, before whom, and the copy; then everything is read through before anybody signs. */
export function SignaturePart({ talk }: { readonly talk: Talk }) {
  const { talk: said, put, staff, faults, review } = talk
  const open = faults.filter(({ code }) => !settledBySigning.has(code))
  // What is open in this part stands below in words.
  const parts = [...new Set(open.map(({ part }) => part))].filter((part) => part !== 'signature')
  return (
    <Part name="signature" talk={talk}>
      <Choices
        legend={words.given}
        value={said.given}
        options={['signed-here', 'signed-on-paper', 'by-phone']}
        say={(one) => words.givens[one]}
        onChoose={(given) => put({ given })}
      />
      <Choose
        label={words.witness}
        help={words.witnessHelp}
        value={said.witness}
        options={staff.filter(([id]) => id !== said.explainedBy)}
        none={words.noWitness}
        onChoose={(witness) => put({ witness })}
      />
      <Choices
        legend={words.copy}
        value={said.copy}
        options={['on-paper', 'by-email', 'not-yet']}
        say={(one) => words.copies[one]}
        onChoose={(copy) => put({ copy })}
      />
      {parts.length > 0 && (
        <div data-screen-only>
          <p>{words.openParts}</p>
          <ul className={styles.faults}>
            {parts.map((part) => (
              <li key={part}>
                <a href={`#part-${part}`}>{words.parts[part]}</a>
              </li>
            ))}
          </ul>
        </div>
      )}
      <p data-screen-only>
        <button type="button" data-weight="main" disabled={open.length > 0} onClick={() => review(true)}>
          {words.review}
        </button>
      </p>
    </Part>
  )
}
