import type { ComponentType } from 'react'
import { lazyPart } from '../../ahead.tsx'

const backup = lazyPart(async () => ({ default: (await import('./backup.tsx')).BackupScreen }))
const breakpoints = lazyPart(async () => ({ default: (await import('./breakpoints.tsx')).OwnBreakpointsScreen }))
const clinic = lazyPart(async () => ({ default: (await import('./clinic.tsx')).ClinicScreen }))
const closedDays = lazyPart(async () => ({ default: (await import('./closed-days.tsx')).ClosedDaysScreen }))
const devices = lazyPart(async () => ({ default: (await import('./devices.tsx')).DevicesScreen }))
const doses = lazyPart(async () => ({ default: (await import('./dose-policies.tsx')).DosePoliciesScreen }))
const home = lazyPart(async () => ({ default: (await import('./home.tsx')).SettingsScreen }))
const me = lazyPart(async () => ({ default: (await import('./me.tsx')).MeScreen }))
const people = lazyPart(async () => ({ default: (await import('./people.tsx')).PeopleScreen }))
const plan = lazyPart(async () => ({ default: (await import('./plan.tsx')).PlanScreen }))
const planEditor = lazyPart(async () => ({ default: (await import('./plan-editor.tsx')).PlanEditorScreen }))
const plans = lazyPart(async () => ({ default: (await import('./plans.tsx')).PlansScreen }))
const policies = lazyPart(async () => ({ default: (await import('./policies.tsx')).HousePoliciesScreen }))
const prices = lazyPart(async () => ({ default: (await import('./prices.tsx')).PricesScreen }))
const readLog = lazyPart(async () => ({ default: (await import('./read-log.tsx')).ReadLogScreen }))
const register = lazyPart(async () => ({ default: (await import('../register/page.tsx')).RegisterScreen }))
const registers = lazyPart(async () => ({ default: (await import('../register/list.tsx')).RegistersScreen }))
const shelf = lazyPart(async () => ({ default: (await import('./shelf.tsx')).ShelfScreen }))

/** The pages of the settings, each loaded when it is opened. */
export const settingsRoutes: readonly (readonly [path: string, screen: ComponentType])[] = [
  ['/settings', home],
  ['/settings/backup', backup],
  ['/settings/breakpoints', breakpoints],
  ['/settings/clinic', clinic],
  ['/settings/closed-days', closedDays],
  ['/settings/devices', devices],
  ['/settings/doses', doses],
  ['/settings/me', me],
  ['/settings/people', people],
  ['/settings/plans', plans],
  ['/settings/plans/new', planEditor],
  ['/settings/plans/of/:plan', plan],
  ['/settings/plans/of/:plan/change', planEditor],
  ['/settings/policies', policies],
  ['/settings/prices', prices],
  ['/settings/read-log', readLog],
  ['/settings/register', registers],
  ['/settings/register/of/:stream', register],
  ['/settings/shelf', shelf],
]
