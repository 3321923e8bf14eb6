import { livingCases, someDays } from './living-cases.ts'

// All four hundred are looked at by `npm test`: every-day.test.ts.
livingCases('some of 400 days, those round holidays and clock changes among them', someDays)
