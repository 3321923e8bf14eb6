import { useMemo } from 'react'
import { theatreTimers } from '#content/protocols/theatre-timers.ts'
import type { OperationOnFile } from '#core/owed/operations.ts'
import { type Ledger, ledgerOf } from '#core/theatre/ledger.ts'
import { useServerNow } from '../../../../journal/use-server-now.ts'
import { useCaseView } from '../../case-view.ts'

/** The ledger of one operation at this moment, by the clock that orders its entries. */
export function useLedger(operation: OperationOnFile): { readonly ledger: Ledger; readonly now: string } {
  const { file } = useCaseView()
  const now = useServerNow()
  const ledger = useMemo(
    () => ledgerOf(file, operation.id, now, theatreTimers.observeEvery.value),
    [file, operation.id, now],
  )
  return { ledger, now }
}
