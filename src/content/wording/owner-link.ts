/** Between the pages behind a private link, and the page for home there. Plain words; grade 8 at most (tested). */
export const ownerLinkInEnglish = {
  pages: 'Pages for {name}',
  home: 'At home now',
  before: 'The choices, as before',
  leaflet: 'Our leaflet, to keep or print (PDF)',
  wentHome: '{name} went home on {date}.',
  asOf: 'This page as it was on {date}.',
  checking: 'We are looking over the medicines',
  checkingText:
    'The list of medicines is being checked here, so it is not shown now. Go by the paper that we gave you last. Not sure what to give? Phone us before you give it.',
  quiet: {
    title: '{name}',
    text: 'We are sorry that {name} has died. You need do nothing more here, and we ask you nothing.',
    talk: 'If you want to talk, or want to know something, phone us.',
  },
} as const
