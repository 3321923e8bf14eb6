import type { Account, Session, StoredLeave } from '#actions/people/accounts.ts'
import { pinVerifierSchema } from '#core/people/pin.ts'
import type { AccountTable, SessionTable, Tables } from './tables.ts'

export function accountRowOf(account: Omit<Account, 'opened' | 'pin'>): Omit<AccountTable, 'opened' | 'pin'> {
  const { clinic, person, login, password, active, madeAt } = account
  return { clinic, person, login, password, active: active ? 1 : 0, made_at: madeAt }
}

export function accountOf({ pin, opened, active, made_at, ...row }: AccountTable): Account {
  return {
    ...row,
    pin: pin === null ? null : pinVerifierSchema.parse(JSON.parse(pin)),
    opened: opened === 1,
    active: active === 1,
    madeAt: made_at,
  }
}

export function sessionOf(row: SessionTable, people: readonly Tables['session_people'][]): Session {
  return {
    id: row.id,
    clinic: row.clinic,
    device: row.device,
    deviceName: row.device_name,
    madeAt: row.made_at,
    expiresAt: row.expires_at,
    endedAt: row.ended_at,
    active: row.active,
    people: people
      .filter(({ session }) => session === row.id)
      .map(({ person, since, until }) => ({ person, since, until })),
  }
}

export function leaveRowOf(clinic: string, leave: StoredLeave): Tables['leaves'] {
  const { id, person, from, until, deputy, by, at } = leave
  return { clinic, id, person, from_day: from, until_day: until, deputy, written_by: by, written_at: at }
}

export function leaveOf(row: Tables['leaves']): StoredLeave {
  const { id, person, deputy } = row
  return { id, person, from: row.from_day, until: row.until_day, deputy, by: row.written_by, at: row.written_at }
}
