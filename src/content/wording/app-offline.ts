/** Working without the server, or signed out on it, in English. */
export const offlineInEnglish = {
  lapsed:
    'Signed out on the server. You can go on: what {name} writes is kept on this device, and sent after somebody signs in here.',
  insecure: {
    title: 'Leave this page open: it is not opened over a secure connection',
    help: 'Everything works as long as this page stays open, also without the network: what is written is kept on this device and sent later. Once it is closed it cannot be opened again without the network. The screen may go dark, and the device may throw away what waits when it runs out of space.',
    connect: 'Open Quiet Ear at the clinic’s secure address instead: Connect a tablet',
  },
} as const
