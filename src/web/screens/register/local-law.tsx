import { registerRules } from '#content/protocols/register-rules.ts'
import { registerInEnglish as words } from '#content/wording/app-register.ts'
import { Notice } from '../../design/notice.tsx'
import { Provenance } from '../../design/provenance.tsx'

/** Whether a page like this satisfies local law is for whoever keeps it to confirm; what one guidance says, with its source. */
export function LocalLaw() {
  return (
    <Notice>
      <p>{words.local}</p>
      <details data-screen-only>
        <summary>{words.rules}</summary>
        <ul>
          {registerRules.map((rule) => (
            <li key={rule.value}>
              {rule.value} <Provenance fact={rule} />
            </li>
          ))}
        </ul>
      </details>
    </Notice>
  )
}
