import { definitionsDiffer } from '#content/outcomes/definitions-differ.ts'
import { fill } from '#core/outcome/finding.ts'
import { Provenance } from '../../../design/provenance.tsx'

/** How far papers agree on what these words mean; `said` is the sentence for the page it stands on. */
export function DefinitionsDiffer({ said }: { readonly said: string }) {
  const { papers, mention, define, gradable } = definitionsDiffer.value
  const about = {
    papers: String(papers),
    mention: String(mention),
    define: String(define),
    gradable: String(gradable),
  }
  return (
    <p className="soft">
      {fill(said, about)} <Provenance fact={definitionsDiffer} />
    </p>
  )
}
