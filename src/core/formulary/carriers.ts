/** What drugs may run in. Closed, so that a rule about calcium or sugar can be kept. */
export const carriers = ['sodium-chloride-0.9', 'glucose-5', 'lactated-ringer', 'balanced-without-calcium'] as const
export type Carrier = (typeof carriers)[number]
