import type { Role } from './may-write.ts'

/** Who writes which register; people have their own action. The page says it before, the server decides by the same table. */
export const mayPut = {
  contact: ['surgeon', 'nurse', 'anaesthetist', 'desk', 'manager'],
  clinic: ['manager', 'desk'],
  price: ['manager', 'desk'],
  'closed-day': ['manager', 'desk'],
} as const satisfies Record<string, readonly Role[]>
