import type { ComponentType } from 'react'
import { lazyPart } from '../../ahead.tsx'

const TheatreListScreen = lazyPart(async () => ({ default: (await import('./screen.tsx')).TheatreListScreen }))

export const theatreRoutes: readonly (readonly [path: string, screen: ComponentType])[] = [
  ['/theatre', TheatreListScreen],
]
