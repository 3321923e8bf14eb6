/** The page that helps a tablet to connect, in English: what this connection is, what works over it, how to trust it. */
export const connectInEnglish = {
  title: 'Connect a tablet',
  product: 'Quiet Ear',
  toTheApp: 'To Quiet Ear',
  thisConnection: 'This connection',
  modes: {
    'this-machine': {
      name: 'This machine',
      says: 'You are at the machine that runs Quiet Ear. Nothing leaves it on the way to this screen, and everything works here.',
    },
    plain: {
      name: 'Clinic network, not encrypted',
      says: 'This connection is not encrypted: whoever is on the same network could read along, passwords too. On a network of the clinic’s own, with no guests on it, that is the clinic’s decision. Some things do not work this way; the table says which.',
    },
    tls: {
      name: 'Clinic network, encrypted',
      says: 'This connection is encrypted: nobody on the network can read along, and everything works here.',
    },
  },
  table: {
    title: 'What works over which connection',
    what: 'What',
    here: 'you are here',
    rows: {
      everyday: 'Reading and writing cases, signing in, changing person',
      unsent: 'What is written while the server is away stays on the device and is sent later',
      offline: 'Opening Quiet Ear while the server is away',
      kept: 'The browser promises not to clear what is unsent',
      awake: 'The screen stays lit in theatre',
      camera: 'Camera inside Quiet Ear (choosing a photograph that the tablet has taken always works)',
      private: 'Nobody on the network can read along',
    },
    yes: 'yes',
    no: 'no',
  },
  addresses: {
    title: 'Addresses of this server',
    encrypted: 'Encrypted',
    plain: 'Not encrypted',
    names:
      'A name works where the clinic’s router knows it; an address always works, until the router gives this machine another one.',
    none: 'This server was started without encryption. Start it without --no-tls to have it.',
  },
  clinicCertificate: {
    title: 'Certificate',
    says: 'This clinic has brought a certificate of its own. On tablets that trust it there is nothing to install: use the encrypted address.',
  },
  trust: {
    title: 'Trust this clinic’s certificate, once for each device',
    why: 'Quiet Ear made a certificate authority for this clinic alone when it first started. A device that trusts it connects encrypted, without a warning. Until then the device blocks the encrypted page or warns of it: that is right, because it does not know the clinic yet.',
    compare:
      'Before you install it, compare the fingerprint below with the one on the machine that runs Quiet Ear: there, open this page at {here}, or look at the window where Quiet Ear was started. Every letter must be the same. If one differs, stop: the file did not come from this server.',
    fingerprint: 'Fingerprint (SHA-256)',
    download: 'Download the certificate',
    limits:
      'It can vouch for names and addresses of a local network only, so it can never stand in for a bank or a shop.',
    afterwards: 'Then open',
    devices: {
      ipad: {
        name: 'iPad or iPhone',
        steps: [
          'Open this page in Safari, touch “Download the certificate” and allow the download of a profile.',
          'Open Settings, touch “Profile Downloaded”, then “Install”.',
          'In Settings, open General, About, Certificate Trust Settings, and switch on “{authority}”.',
        ],
      },
      android: {
        name: 'Android tablet or phone',
        steps: [
          'Touch “Download the certificate” and keep the file.',
          'Open Settings and search for “CA certificate”. Touch it, then “Install anyway”.',
          'Choose the downloaded file. Android says that the network may be watched: it says so of every certificate that somebody installs.',
        ],
      },
      windows: {
        name: 'Windows',
        steps: [
          'Download the certificate and open the file. Touch “Install Certificate”.',
          'Choose “Current User”, then “Place all certificates in the following store”, and there “Trusted Root Certification Authorities”.',
          'Close the browser and open it again.',
        ],
      },
      mac: {
        name: 'Mac',
        steps: [
          'Download the certificate and open the file: Keychain Access asks where to put it. Choose “login”.',
          'Find “{authority}”, open it, open “Trust”, and choose “Always Trust”.',
        ],
      },
      firefox: {
        name: 'Firefox, on any computer',
        steps: [
          'In Settings, search for “certificates” and open “View Certificates”, “Authorities”, “Import”.',
          'Choose the downloaded file and tick “Trust this CA to identify websites”.',
        ],
      },
    },
    menus: 'Menus are called a little differently from one version to the next.',
  },
} as const
