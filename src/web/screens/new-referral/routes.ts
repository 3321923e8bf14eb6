import { type ComponentType, lazy } from 'react'

const NewReferralScreen = lazy(async () => ({ default: (await import('./screen.tsx')).NewReferralScreen }))

export const newReferralRoutes: readonly (readonly [path: string, screen: ComponentType])[] = [
  ['/new', NewReferralScreen],
]
