/** The stretches of the course, in the order in which a case first meets them. */
export const chapters = ['Referral', 'Work-up', 'Choice', 'Agreement', 'Theatre', 'Ward', 'Home', 'Year'] as const
export type Chapter = (typeof chapters)[number]

/** Earlier is lower. Example: `chapterRank('Choice') < chapterRank('Year')`. */
export function chapterRank(chapter: Chapter): number {
  return chapters.indexOf(chapter)
}
