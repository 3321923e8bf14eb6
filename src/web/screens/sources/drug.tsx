import { useParams } from 'wouter'
import { drugById } from '#core/formulary/drug.ts'
import { DrugPage } from './drug-page.tsx'
import { NoSuchPage } from './frame.tsx'
import { InThisClinic } from './in-this-clinic.tsx'
import { drugs } from './library.ts'

/** The page of the drug in the address, with what this clinic makes of it. */
export function DrugScreen() {
  const { drug: id = '' } = useParams<{ drug: string }>()
  const drug = drugById(drugs, id)
  if (!drug) return <NoSuchPage part="formulary" />
  return (
    <DrugPage drug={drug}>
      <InThisClinic drug={drug} />
    </DrugPage>
  )
}
