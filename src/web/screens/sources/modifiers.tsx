import { modifiers } from '#content/evidence/modifiers.ts'
import { studies } from '#content/studies/index.ts'
import { modifiersInEnglish as words } from '#content/wording/modifiers.ts'
import type { ProcedureId } from '#core/animal/procedure.ts'
import { type Modifier, oddsRatioOf } from '#core/evidence/modifier.ts'
import { capital } from '#core/outcome/capital.ts'
import { sayModifier } from '#documents/sources/say-modifier.ts'
import { Provenance } from '../../design/provenance.tsx'

/** The published circumstances of one operation. */
export function modifiersOf(procedure: ProcedureId): readonly Modifier[] {
  return modifiers.filter((one) => one.procedure === procedure)
}

/** Every published circumstance of one operation with its ratio, also those that contradict each other. */
export function Modifiers({ procedure }: { readonly procedure: ProcedureId }) {
  const known = modifiersOf(procedure)
  return (
    <section aria-labelledby="modifiers" className="stack">
      <h2 id="modifiers">{words.title}</h2>
      <p className="soft">{known.length === 0 ? words.none : words.lead}</p>
      <ul className="bare stack">
        {known.map((one) => (
          <li key={one.id}>
            <p>{capital(sayModifier(one))}.</p>
            {contradicted(one, known) && <p className="soft">{words.disagree}</p>}
            <Provenance fact={one} />
          </li>
        ))}
      </ul>
    </section>
  )
}

/** Another study of the same circumstance and outcome points the other way. */
function contradicted(one: Modifier, all: readonly Modifier[]): boolean {
  const way = (other: Modifier) => {
    if (other.effect.kind === 'direction') return other.effect.says
    return (oddsRatioOf(other, studies)?.value ?? 1) > 1 ? 'more' : 'fewer'
  }
  return all.some((other) => other.factor === one.factor && other.outcome === one.outcome && way(other) !== way(one))
}
