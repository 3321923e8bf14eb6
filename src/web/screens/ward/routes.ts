import type { ComponentType } from 'react'
import { lazyPart } from '../../ahead.tsx'

const WardScreen = lazyPart(async () => ({ default: (await import('./screen.tsx')).WardScreen }))

export const wardRoutes: readonly (readonly [path: string, screen: ComponentType])[] = [['/ward', WardScreen]]
