import { type ComponentType, lazy } from 'react'

const backup = lazy(async () => ({ default: (await import('./backup.tsx')).BackupScreen }))
const clinic = lazy(async () => ({ default: (await import('./clinic.tsx')).ClinicScreen }))
const closedDays = lazy(async () => ({ default: (await import('./closed-days.tsx')).ClosedDaysScreen }))
const devices = lazy(async () => ({ default: (await import('./devices.tsx')).DevicesScreen }))
const home = lazy(async () => ({ default: (await import('./home.tsx')).SettingsScreen }))
const me = lazy(async () => ({ default: (await import('./me.tsx')).MeScreen }))
const people = lazy(async () => ({ default: (await import('./people.tsx')).PeopleScreen }))
const prices = lazy(async () => ({ default: (await import('./prices.tsx')).PricesScreen }))
const readLog = lazy(async () => ({ default: (await import('./read-log.tsx')).ReadLogScreen }))

/** The pages of the settings, each loaded when it is opened. */
export const settingsRoutes: readonly (readonly [path: string, screen: ComponentType])[] = [
  ['/settings', home],
  ['/settings/backup', backup],
  ['/settings/clinic', clinic],
  ['/settings/closed-days', closedDays],
  ['/settings/devices', devices],
  ['/settings/me', me],
  ['/settings/people', people],
  ['/settings/prices', prices],
  ['/settings/read-log', readLog],
]
