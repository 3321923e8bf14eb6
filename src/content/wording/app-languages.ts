/** The languages in which owners are spoken to, as the staff say them. */
export const languagesInEnglish: Readonly<Record<string, string>> = { en: 'English', es: 'Spanish' }
