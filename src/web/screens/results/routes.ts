import type { ComponentType } from 'react'
import { lazyPart } from '../../ahead.tsx'

const ResultsScreen = lazyPart(async () => ({ default: (await import('./screen.tsx')).ResultsScreen }))
const GrowsScreen = lazyPart(async () => ({ default: (await import('./grows/screen.tsx')).GrowsScreen }))
const YearsScreen = lazyPart(async () => ({ default: (await import('./years/screen.tsx')).YearsScreen }))

export const resultsRoutes: readonly (readonly [path: string, screen: ComponentType])[] = [
  ['/results', ResultsScreen],
  ['/results/grows', GrowsScreen],
  ['/results/years', YearsScreen],
]
