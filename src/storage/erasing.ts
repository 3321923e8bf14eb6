import type { Transaction } from 'kysely'
import type { Header } from '#core/journal/entry.ts'
import { inPieces } from './entry-rows.ts'
import type { Tables } from './tables.ts'

export type Erased = { readonly id: string; readonly stream: string }

/**
 * Carries out every erasure order whose entry is here and still has its body: the body goes, and with it any copy
 * kept aside under the same id and any picture that no other entry names. Header and body hash stay. An order that came before its entry is carried out when
 * the entry arrives. `among` narrows the search to orders or entries that have just been accepted.
 */
export async function eraseAsOrdered(
  tx: Transaction<Tables>,
  clinic: string,
  among?: readonly string[],
): Promise<Erased[]> {
  const erased: Erased[] = []
  for (const some of among === undefined ? [undefined] : inPieces(among)) {
    for (const order of await openOrders(tx, clinic, some)) {
      if (erased.some(({ id }) => id === order.id)) continue
      await eraseOne(tx, clinic, order)
      erased.push({ id: order.id, stream: order.stream })
    }
  }
  return erased
}

type OpenOrder = Awaited<ReturnType<typeof openOrders>>[number]

async function openOrders(tx: Transaction<Tables>, clinic: string, among: readonly string[] | undefined) {
  let query = tx
    .selectFrom('targets')
    .innerJoin('entries as order', (join) =>
      join.onRef('order.clinic', '=', 'targets.clinic').onRef('order.id', '=', 'targets.entry'),
    )
    .innerJoin('entries as named', (join) =>
      join.onRef('named.clinic', '=', 'targets.clinic').onRef('named.id', '=', 'targets.target'),
    )
    .select([
      'named.id as id',
      'named.stream as stream',
      'named.header as header',
      'named.received_at as arrived',
      'order.received_at as ordered',
      'order.header as orderHeader',
      'order.body as orderBody',
    ])
    .where('targets.clinic', '=', clinic)
    .where('targets.role', '=', 'erases')
    .where('named.erased_on', 'is', null)
    .where('named.kind', '<>', 'erasure')
  if (among) query = query.where((is) => is.or([is('targets.entry', 'in', among), is('targets.target', 'in', among)]))
  return query.orderBy('order.position').execute()
}

async function eraseOne(tx: Transaction<Tables>, clinic: string, order: OpenOrder): Promise<void> {
  const [, on] = [order.ordered, order.arrived].sort()
  await tx
    .updateTable('entries')
    .set({ body: null, erased_on: on ?? order.ordered, erased_by: orderedBy(order) })
    .where('clinic', '=', clinic)
    .where('id', '=', order.id)
    .execute()
  await tx.deleteFrom('kept_aside').where('clinic', '=', clinic).where('id', '=', order.id).execute()
  const { attachments } = JSON.parse(order.header) as Header
  for (const { hash } of attachments) {
    if (await isErased(tx, clinic, hash)) {
      await tx.deleteFrom('files').where('clinic', '=', clinic).where('hash', '=', hash).execute()
    }
  }
}

/** True when erased entries name this file and no other entry does: its bytes are gone and must not come back. */
export async function isErased(tx: Transaction<Tables>, clinic: string, hash: string): Promise<boolean> {
  const naming = tx
    .selectFrom('entries')
    .select('id')
    .where('clinic', '=', clinic)
    .where('header', 'like', `%"hash":"${hash}"%`)
    .limit(1)
  const erased = await naming.where('erased_on', 'is not', null).execute()
  return erased.length > 0 && (await naming.where('erased_on', 'is', null).execute()).length === 0
}

function orderedBy({ orderBody, orderHeader }: OpenOrder): string {
  const body = JSON.parse(orderBody ?? '{}') as { orderedBy?: unknown }
  // PostgreSQL's text cannot hold the character zero; the order itself keeps what was written.
  if (typeof body.orderedBy === 'string') return body.orderedBy.replaceAll('\u0000', '\uFFFD')
  const { author } = JSON.parse(orderHeader) as Header
  return author.kind === 'person' ? author.person : author.kind
}
