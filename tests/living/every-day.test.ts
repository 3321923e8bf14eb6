import { everyDay, livingCases } from './living-cases.ts'

livingCases('every one of 400 days', everyDay)
