import { database } from './database.ts'

/** The bytes of a file by its hash: from this device while they are here, else from the server; null when neither has them. */
export async function fileBytes(hash: string): Promise<Uint8Array | null> {
  const kept = await (await database()).get('files', hash)
  if (kept) return new Uint8Array(await kept.bytes.arrayBuffer())
  try {
    const response = await fetch(`/api/files/${hash}`)
    return response.ok ? new Uint8Array(await response.arrayBuffer()) : null
  } catch {
    return null
  }
}
