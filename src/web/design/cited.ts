import { createContext } from 'react'

/** The numbers under which a page lists its sources at the end; a page without such a list numbers nothing. */
export const CitedNumbers = createContext<ReadonlyMap<string, number>>(new Map())
