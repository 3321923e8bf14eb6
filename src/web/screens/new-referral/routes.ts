import type { ComponentType } from 'react'
import { lazyPart } from '../../ahead.tsx'

const NewReferralScreen = lazyPart(async () => ({ default: (await import('./screen.tsx')).NewReferralScreen }))

export const newReferralRoutes: readonly (readonly [path: string, screen: ComponentType])[] = [
  ['/new', NewReferralScreen],
]
