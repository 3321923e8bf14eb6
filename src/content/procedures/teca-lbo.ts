import { procedure } from '#core/procedures/procedure.ts'
import { countsAgree, throatPackOut } from '../follow-up/points.ts'
import { commonPractice, readNotes, readStudy, standardAnatomy } from '../follow-up/provenance.ts'
import { faceAndEyeLooks, wholeYear } from '../follow-up/visits.ts'

const houseNotes = { sources: ['house-2015-wsava'], ...readNotes } as const

/** Removal of the whole ear canal with opening and clearing of the bulla from the side. */
export const tecaLbo = procedure({
  id: 'teca-lbo',
  name: 'Total ear canal ablation with lateral bulla osteotomy',
  species: ['dog', 'cat'],
  indications: [
    { value: 'The canal is narrowed for good or turned to bone, and adequate medicine has failed.', ...houseNotes },
    { value: 'Stenosis that steroids do not open.', ...houseNotes },
    { value: 'The drum is lost for good and the bulla keeps filling.', ...houseNotes },
    { value: 'The ear cannot be treated by mouth or by drops.', ...houseNotes },
    { value: 'An earlier lateral or vertical operation failed.', ...houseNotes },
    {
      value: 'Malignant tumour of the canal.',
      sources: ['house-2015-wsava', 'vsso-ear-tumours', 'merck-ear-tumours'],
      ...readNotes,
    },
    { value: 'The canal is torn off, crushed, or closed from birth.', ...houseNotes },
  ],
  against: [
    {
      value: 'Nerve signs before surgery: a CT or MRI comes first.',
      sources: ['vin-8896829'],
      ...readNotes,
    },
    { value: 'Skin or hormone disease that nobody treats: it goes on after the canal is gone.', ...commonPractice },
    { value: 'A narrowing that may still open under treatment that was never properly tried.', ...commonPractice },
  ],
  checkpoints: [
    {
      id: 'k1-skin',
      title: 'Skin',
      mind: 'T or circle round the opening',
      details: [
        {
          id: 'cut',
          asks: 'Skin cut',
          kind: 'coded',
          answers: {
            't-shaped': 'The skin was cut in a T over the vertical canal.',
            circular: 'The skin was cut in a circle round the opening of the canal.',
            other: 'The skin was cut in another way than a T or a circle.',
          },
        },
      ],
      done: 'The skin was cut.',
      notDone: 'The skin cut was not made: {because}.',
      because: [
        {
          value: 'A T had more wound trouble, a circle more bleeding and more weak faces.',
          sources: ['esposito-2026'],
          where: '142 dogs, 156 operations',
          ...readStudy,
        },
      ],
    },
    {
      id: 'k2-vertical-canal',
      title: 'Vertical canal free',
      mind: 'hug the cartilage; push the parotid away',
      details: [
        {
          id: 'plane',
          asks: 'Plane',
          kind: 'coded',
          answers: {
            'on-cartilage': 'The vertical canal was freed on its cartilage all round.',
            'left-cartilage': 'The vertical canal was freed; the plane left the cartilage in places.',
          },
        },
        {
          id: 'parotid',
          asks: 'Parotid gland',
          kind: 'coded',
          answers: {
            'pushed-away': 'The parotid gland was pushed away whole.',
            injured: 'The parotid gland was injured.',
            'not-met': 'The parotid gland was not met.',
          },
        },
      ],
      done: 'The vertical canal was freed.',
      notDone: 'The vertical canal was not freed: {because}.',
      because: [
        { value: 'Away from the cartilage lie the gland, the facial nerve and the vessels.', ...standardAnatomy },
      ],
    },
    {
      id: 'k3-facial-nerve',
      title: 'Facial nerve',
      mind: 'behind and below the meatus; find it before anything is pulled',
      details: [
        {
          id: 'nerve',
          asks: 'Facial nerve',
          kind: 'coded',
          answers: {
            seen: 'The facial nerve was seen.',
            felt: 'The facial nerve was felt, not seen.',
            'not-found': 'The facial nerve was looked for and not found.',
          },
        },
        {
          id: 'state',
          asks: 'It lay',
          kind: 'coded',
          answers: {
            free: 'It lay free.',
            stuck: 'It was stuck to the canal and freed.',
            embedded: 'It was embedded in the canal wall.',
            cut: 'It was cut.',
          },
        },
        {
          id: 'held',
          asks: 'Held with',
          kind: 'coded',
          answers: {
            'not-held': 'It was not held.',
            'hand-retractor': 'It was held aside with a hand retractor.',
            'self-retaining': 'It was held aside with a self-retaining retractor.',
            sling: 'It was held aside in a sling.',
          },
        },
        { id: 'minutes-held', asks: 'Minutes held', kind: 'number', sentence: 'Minutes of retraction: {answer}.' },
      ],
      done: 'The facial nerve was attended to.',
      notDone: 'The facial nerve was not looked for: {because}.',
      because: [
        {
          value:
            'The nerve leaves the stylomastoid foramen behind the meatus; a bony ridge between them is the landmark.',
          sources: ['smeak-inpanbutr-2005'],
          ...readStudy,
        },
        {
          value: 'Strong retraction is blamed for much weakness that passes.',
          sources: ['smeak-inpanbutr-2005'],
          ...readStudy,
        },
      ],
    },
    {
      id: 'k4-horizontal-canal',
      title: 'Horizontal canal',
      mind: 'to the bony meatus, cut flush; specimen whole and marked',
      details: [
        {
          id: 'cut',
          asks: 'Cut at the meatus',
          kind: 'coded',
          answers: {
            flush: 'The horizontal canal was cut flush with the bony meatus.',
            'not-flush': 'The horizontal canal was cut, leaving a rim of cartilage.',
          },
        },
        {
          id: 'specimen',
          asks: 'Canal came out',
          kind: 'coded',
          answers: { whole: 'The canal came out in one piece.', 'in-pieces': 'The canal came out in pieces.' },
        },
        {
          id: 'marked',
          asks: 'Specimen marked',
          kind: 'coded',
          answers: { yes: 'Its margins were marked.', no: 'Its margins were not marked.' },
        },
      ],
      done: 'The horizontal canal was cut at the bony meatus.',
      notDone: 'The horizontal canal was not removed: {because}.',
      because: [{ value: 'A rim that stays can carry lining that discharges for life.', ...standardAnatomy }],
    },
    {
      id: 'k5-meatus-lining',
      title: 'Lining of the bony meatus',
      mind: 'out entire; a notch in the ventrolateral floor helps',
      details: [
        {
          id: 'lining',
          asks: 'Lining',
          kind: 'coded',
          answers: {
            'out-entire': 'The lining of the bony meatus was taken out entire.',
            'in-pieces': 'The lining of the bony meatus was taken out in pieces.',
            'remnant-suspected': 'A remnant of the lining of the bony meatus may have stayed.',
          },
        },
        {
          id: 'notch',
          asks: 'Notch in the floor',
          kind: 'coded',
          answers: { yes: 'A notch was cut in the floor of the meatus.', no: 'No notch was cut.' },
        },
      ],
      done: 'The lining of the bony meatus was taken out.',
      notDone: 'The lining of the bony meatus was not taken out: {because}.',
      because: [
        { value: 'Retained lining explained both recurrences among 13 dogs.', sources: ['sharp-1990'], ...readStudy },
        {
          value: 'Retained lining was found in five of seven dogs explored again.',
          sources: ['smeak-1996'],
          ...readStudy,
        },
      ],
    },
    {
      id: 'k6-bulla',
      title: 'Bulla opened',
      mind: 'wide, ventral and caudal; NOT rostral (vein, upper recess)',
      details: [
        {
          id: 'tool',
          asks: 'Opened with',
          kind: 'coded',
          answers: {
            rongeurs: 'The bulla was opened from the side with rongeurs.',
            burr: 'The bulla was opened from the side with a burr.',
            both: 'The bulla was opened from the side with rongeurs and burr.',
          },
        },
        {
          id: 'opening',
          asks: 'Opening',
          kind: 'coded',
          answers: {
            wide: 'The opening was wide, carried ventrally and caudally.',
            'small-window': 'The opening was a small window.',
          },
        },
        {
          id: 'wall',
          asks: 'Bulla wall',
          kind: 'coded',
          answers: {
            normal: 'Its wall was of normal thickness.',
            thick: 'Its wall was thick.',
            'eaten-away': 'Its wall was eaten away.',
          },
        },
      ],
      done: 'The bulla was opened from the side.',
      notDone: 'The bulla was not opened: {because}.',
      because: [
        {
          value: 'Bone is taken downwards and backwards; rostrally lie the retroarticular vein and the upper recess.',
          sources: ['smeak-inpanbutr-2005'],
          ...readStudy,
        },
        {
          value: 'Without clearing the bulla 82 % of 39 ears had complications.',
          sources: ['smeak-1986'],
          ...readStudy,
        },
      ],
    },
    {
      id: 'k7-sample',
      title: 'Samples',
      mind: 'on entry and after lavage; tissue better than fluid; canal to histology',
      details: [
        {
          id: 'taken',
          asks: 'Bulla sampled',
          kind: 'coded',
          answers: {
            'on-entry': 'The bulla was sampled on entry.',
            'after-lavage': 'The bulla was sampled after lavage.',
            both: 'The bulla was sampled on entry and again after lavage.',
          },
        },
        {
          id: 'cultures',
          asks: 'Cultures',
          kind: 'coded',
          answers: {
            aerobic: 'Aerobic culture was asked for.',
            'aerobic-and-anaerobic': 'Aerobic and anaerobic culture were asked for.',
            'with-fungal': 'Aerobic, anaerobic and fungal culture were asked for.',
          },
        },
        {
          id: 'material',
          asks: 'Material',
          kind: 'coded',
          answers: { tissue: 'Tissue was sent.', fluid: 'Fluid was sent.', swab: 'A swab was sent.' },
        },
        {
          id: 'canal',
          asks: 'Canal',
          kind: 'coded',
          answers: {
            'to-histology': 'The canal was sent for histology.',
            'not-sent': 'The canal was not sent for histology.',
          },
        },
      ],
      done: 'Samples were taken.',
      notDone: 'No sample was taken: {because}.',
      because: [
        {
          value:
            'Samples before and after flushing differed in 31 of 44 ears; 26 % grew something only after the flush.',
          sources: ['hettlich-2005'],
          ...readStudy,
        },
      ],
    },
    {
      id: 'k8-curettage',
      title: 'Debris and lining of the bulla',
      mind: 'leave the dorsomedial wall, promontory, windows and ossicles alone',
      details: [
        {
          id: 'content',
          asks: 'Bulla held',
          kind: 'coded',
          answers: {
            dry: 'The bulla was dry.',
            fluid: 'The bulla held fluid.',
            pus: 'The bulla held pus.',
            keratin: 'The bulla held layered keratin.',
            'soft-tissue': 'The bulla held soft tissue.',
            mass: 'The bulla held a mass.',
          },
        },
        {
          id: 'cleared',
          asks: 'Cleared',
          kind: 'coded',
          answers: {
            complete: 'Debris and lining were curetted out completely.',
            incomplete: 'Debris and lining were curetted out as far as could be reached; some stayed.',
          },
        },
        {
          id: 'left-alone',
          asks: 'Dorsomedial wall left alone',
          kind: 'coded',
          answers: {
            yes: 'The dorsomedial wall, promontory, windows and ossicles were left alone.',
            no: 'The curette reached the dorsomedial wall.',
          },
        },
      ],
      done: 'Debris and lining of the bulla were curetted out.',
      notDone: 'The bulla was not curetted: {because}.',
      because: [{ value: 'Balance and hearing lie behind the dorsomedial wall.', ...standardAnatomy }],
    },
    {
      id: 'k9-lavage',
      title: 'Lavage',
      mind: 'warm; measure in and out',
      details: [
        { id: 'in-ml', asks: 'In, mL', kind: 'number', sentence: 'Lavage in: {answer} mL.' },
        { id: 'out-ml', asks: 'Recovered, mL', kind: 'number', sentence: 'Lavage recovered: {answer} mL.' },
        {
          id: 'warm',
          asks: 'Warm',
          kind: 'coded',
          answers: { yes: 'The fluid was warm.', no: 'The fluid was not warmed.' },
        },
      ],
      done: 'The bulla was washed out.',
      notDone: 'The bulla was not washed out: {because}.',
      because: [{ value: 'Lavage that is not measured makes the blood loss a span.', ...commonPractice }],
    },
    {
      id: 'k10-haemostasis',
      title: 'Bleeding',
      mind: 'press at the source, pack, wait; never clip blindly',
      details: [
        {
          id: 'bleeding',
          asks: 'Bleeding',
          kind: 'coded',
          answers: {
            none: 'There was no bleeding that needed more than swabs.',
            pressure: 'Bleeding stopped under pressure.',
            packed: 'Bleeding was packed.',
            'clipped-or-tied': 'A bleeding vessel was clipped or tied under sight.',
            ongoing: 'Some oozing went on at closure.',
          },
        },
        {
          id: 'vessel',
          asks: 'From',
          kind: 'coded',
          answers: {
            'retroglenoid-vein': 'It came from the retroglenoid vein.',
            'carotid-branch': 'It came from a branch of the external carotid artery.',
            'small-vessels': 'It came from small vessels.',
            'not-known': 'Its source was not seen.',
          },
        },
      ],
      done: 'Bleeding was controlled.',
      notDone: 'Haemostasis was not completed: {because}.',
      because: [
        {
          value: 'The vein lies rostral to the meatus, out of sight; swab-tip pressure at the source comes first.',
          sources: ['smeak-inpanbutr-2005'],
          ...readStudy,
        },
      ],
    },
    {
      id: 'k11-local-anaesthetic',
      title: 'Local anaesthetic',
      mind: 'against the ceiling of the whole animal, both sides together',
      details: [
        {
          id: 'given',
          asks: 'Given as',
          kind: 'coded',
          answers: {
            splash: 'Local anaesthetic was splashed on the closed deep layer.',
            catheter: 'A wound catheter was placed for local anaesthetic.',
            none: 'No further local anaesthetic was given before closure.',
          },
        },
        {
          id: 'ceiling',
          asks: 'Ceiling',
          kind: 'coded',
          answers: {
            within: 'The total stayed within the ceiling of the animal.',
            'not-worked-out': 'The total was not worked out against the ceiling.',
          },
        },
      ],
      done: 'Local anaesthetic was given against the ceiling of the animal.',
      notDone: 'No local anaesthetic was given: {because}.',
      because: [{ value: 'Blocks, splash, catheter and both sides share one ceiling.', ...commonPractice }],
    },
    {
      id: 'k12-drain',
      title: 'Drain or none',
      mind: 'through a hole of its own, never through the suture line',
      details: [
        {
          id: 'drain',
          asks: 'Drain',
          kind: 'coded',
          answers: {
            none: 'No drain was placed.',
            'own-hole': 'A drain was placed and led out through a hole of its own.',
          },
        },
      ],
      done: 'Whether to drain was decided.',
      notDone: 'A drain was not considered: {because}.',
      because: [
        {
          value: 'Closing without a drain did as well in 59 dogs; dogs with one stayed longer.',
          sources: ['devitt-1997'],
          ...readStudy,
        },
      ],
    },
    {
      id: 'k13-pinna',
      title: 'Flap colour',
      mind: 'pink before the last stitch',
      details: [
        {
          id: 'colour',
          asks: 'Colour',
          kind: 'coded',
          answers: { pink: 'The ear flap was pink.', pale: 'The ear flap was pale.', dark: 'The ear flap was dark.' },
        },
      ],
      done: 'The colour of the ear flap was checked.',
      notDone: 'The colour of the ear flap was not checked: {because}.',
      because: [
        { value: 'The edge of the flap dies when the caudal auricular branches are injured.', ...standardAnatomy },
      ],
    },
    {
      id: 'k14-closure',
      title: 'Closure',
      mind: 'layers, dead space, the middle of the T',
      details: [
        { id: 'layers', asks: 'Layers', kind: 'number', sentence: 'Layers of closure: {answer}.' },
        {
          id: 'dead-space',
          asks: 'Dead space',
          kind: 'coded',
          answers: { closed: 'The dead space was closed.', partly: 'The dead space was closed in part.' },
        },
        {
          id: 't-junction',
          asks: 'Middle of the T',
          kind: 'coded',
          answers: {
            'without-tension': 'The middle of the T came together without tension.',
            'under-tension': 'The middle of the T was under tension.',
            'no-t': 'There was no T to close.',
          },
        },
      ],
      done: 'The wound was closed in layers.',
      notDone: 'The wound was not closed: {because}.',
      because: [{ value: 'The middle of the T has the least blood supply and opens first.', ...commonPractice }],
    },
    {
      id: 'k15-counts',
      title: 'Counts and throat pack',
      mind: 'counts agree; throat pack out; specimens labelled',
      details: [countsAgree, throatPackOut],
      done: 'The counts were made.',
      notDone: 'The counts were not made: {because}.',
      because: [{ value: 'A forgotten pack closes the airway.', ...commonPractice }],
    },
  ],
  checkpointsComplete: { kind: 'known', fact: 'from-the-references' },
  risks: [
    { outcome: 'haemorrhage_intraop_any', shows: 'in-theatre' },
    { outcome: 'intraop_complication_any', shows: 'in-theatre' },
    { outcome: 'perioperative_death', shows: 'first-days' },
    { outcome: 'respiratory_complication', shows: 'first-days' },
    { outcome: 'facial_nerve_deficit_any', shows: 'first-days' },
    { outcome: 'facial_nerve_deficit_permanent', shows: 'late' },
    { outcome: 'horner_any', shows: 'first-days' },
    { outcome: 'horner_permanent', shows: 'late' },
    { outcome: 'vestibular_any', shows: 'first-days' },
    { outcome: 'vestibular_permanent', shows: 'late' },
    { outcome: 'ocular_surface_any', shows: 'first-weeks' },
    { outcome: 'corneal_ulcer', shows: 'first-days' },
    { outcome: 'wound_infection_or_dehiscence', shows: 'first-weeks' },
    { outcome: 'wound_any', shows: 'first-weeks' },
    { outcome: 'pinna_necrosis', shows: 'first-weeks' },
    { outcome: 'hearing_loss_perceived', shows: 'first-weeks' },
    { outcome: 'deep_recurrence', shows: 'late' },
    { outcome: 'revision_surgery', shows: 'late' },
    { outcome: 'pinna_or_canal_dermatitis', shows: 'late' },
    { outcome: 'tumour_local_recurrence', shows: 'late' },
  ],
  consentItems: [
    'which-ear',
    'what-is-removed',
    'alternatives-offered',
    'no-treatment-offered',
    'risks-with-numbers',
    'hearing',
    'face-and-eye',
    'late-tract',
    'skin-disease-goes-on',
    'who-operates',
    'may-extend',
    'resuscitation',
    'ceiling-of-costs',
    'tissue-to-laboratory',
    'photographs',
  ],
  followUp: {
    steps: wholeYear,
    faceLooks: { kind: 'known', fact: faceAndEyeLooks },
    plans: ['skin', 'other-ear'],
  },
})
