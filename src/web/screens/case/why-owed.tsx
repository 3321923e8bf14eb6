import { owedInEnglish } from '#content/wording/owed.ts'
import { personNamed } from '#core/journal/clinic.ts'
import type { OwedItem } from '#core/owed/owed-item.ts'
import { whyOwed } from '#core/why/why-owed.ts'
import { Why } from '../../design/why.tsx'
import { useCaseView } from './case-view.ts'

/** Why something is due when it is. */
export function WhyOwed({ item, what }: { readonly item: OwedItem; readonly what: string }) {
  const { file } = useCaseView()
  return (
    <Why
      about={what}
      make={() => whyOwed(item, owedInEnglish)}
      nameOf={(person) => (file.people.has(person) ? personNamed(file, person) : person)}
    />
  )
}
