import type { ComponentType } from 'react'
import { lazyPart } from '../../ahead.tsx'

const ResultsScreen = lazyPart(async () => ({ default: (await import('./screen.tsx')).ResultsScreen }))

export const resultsRoutes: readonly (readonly [path: string, screen: ComponentType])[] = [['/results', ResultsScreen]]
