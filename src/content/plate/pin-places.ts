import type { PinPlaces } from '#core/plate/pin.ts'
import { standardAnatomy } from '../follow-up/provenance.ts'

const canal = ['opening', 'vertical-canal', 'horizontal-canal'] as const
const nerve = ['facial-nerve', 'nerve-foramen', 'nerve-to-lids'] as const
/** What the surgeon of the bulla can hurt behind the dorsomedial wall. */
const medialWall = ['promontory', 'inner-ear', 'ossicles', 'leave-alone'] as const

/** Which part of the ear a finding, an operation, a step of it and a counted risk belong to. */
export const pinPlaces = {
  signs: {
    flapCarriage: ['flap'],
    canalFeel: ['cartilage', 'vertical-canal', 'annular-cartilage'],
    discharge: canal,
    stenosis: canal,
    drum: ['drum'],
    mass: [...canal, 'mass'],
    scannedMass: [...canal, 'mass', 'bulla'],
    painOnPressing: ['cartilage', 'parotid'],
    painOnJawOpening: ['jaw-joint', 'bulla'],
    swelling: ['parotid'],
    drainingTract: ['parotid', 'scar'],
    bulla: ['bulla', 'septum'],
    bullaWall: ['bulla'],
    canalMineral: ['cartilage', 'annular-cartilage'],
    blink: nerve,
    lipOrEarDroop: ['facial-nerve'],
    wound: ['scar', 'incision'],
  },
  procedures: {
    'teca-lbo': [
      'tragus',
      'antitragus',
      ...canal,
      'cartilage',
      'annular-cartilage',
      'bony-meatus',
      'drum',
      'bulla',
      'mass',
      'incision',
      'cut-at-meatus',
      'bulla-opening',
      'scar',
    ],
    'ventral-bulla-osteotomy': ['bulla', 'septum', 'mass'],
    traction: ['mass', 'auditory-tube', 'drum'],
    'lateral-wall-resection': ['vertical-canal', 'cartilage', 'tragus', 'opening'],
    'vertical-canal-ablation': ['vertical-canal', 'cartilage', 'tragus', 'antitragus', 'opening'],
    'subtotal-ablation': ['vertical-canal', 'horizontal-canal', 'cartilage', 'bulla'],
  },
  checkpoints: {
    'k1-skin': ['incision', 'opening', 'tragus', 'scar'],
    'k2-vertical-canal': ['vertical-canal', 'cartilage', 'parotid'],
    'k3-facial-nerve': ['facial-nerve', 'nerve-foramen'],
    'k4-horizontal-canal': ['horizontal-canal', 'cut-at-meatus', 'annular-cartilage'],
    'k5-meatus-lining': ['bony-meatus', 'drum'],
    'k6-bulla': ['bulla', 'bulla-opening', 'retroglenoid-vein'],
    'k7-sample': ['bulla'],
    'k8-curettage': ['bulla', ...medialWall],
    'k9-lavage': ['bulla'],
    'k10-haemostasis': ['retroglenoid-vein', 'external-carotid'],
    'k13-pinna': ['flap', 'flap-artery'],
    'k14-closure': ['scar', 'incision'],
    'v2-approach': ['hypoglossal-nerve', 'digastric'],
    'v3-bulla': ['bulla', 'septum'],
    'v5-curettage': ['bulla', 'promontory'],
  },
  outcomes: {
    value: {
      facial_nerve_deficit_any: nerve,
      facial_nerve_deficit_temporary: nerve,
      facial_nerve_deficit_permanent: nerve,
      facial_nerve_deficit_persisting_2mo: nerve,
      ocular_surface_any: ['nerve-to-lids'],
      corneal_ulcer: ['nerve-to-lids'],
      // The fibres of the pupil cross the promontory.
      horner_any: ['promontory', 'leave-alone', 'septum'],
      horner_permanent: ['promontory', 'leave-alone', 'septum'],
      vestibular_any: ['inner-ear', 'promontory', 'leave-alone'],
      vestibular_permanent: ['inner-ear', 'promontory', 'leave-alone'],
      hypoglossal: ['hypoglossal-nerve'],
      haemorrhage_intraop_any: ['retroglenoid-vein', 'external-carotid', 'temple-artery', 'flap-artery'],
      haemorrhage_intraop_major: ['retroglenoid-vein', 'external-carotid'],
      wound_infection_or_dehiscence: ['incision', 'scar'],
      wound_any: ['incision', 'scar'],
      // What stays of the lining of meatus and bulla discharges later.
      deep_recurrence: ['bony-meatus', 'bulla'],
      revision_surgery: ['bulla'],
      disease_recurrence_local: ['bulla', 'mass'],
      tumour_local_recurrence: ['mass'],
      pinna_necrosis: ['flap', 'flap-artery'],
      pinna_or_canal_dermatitis: ['flap'],
      hearing_loss_perceived: ['inner-ear', 'ossicles', 'drum'],
    },
    ...standardAnatomy,
  },
} as const satisfies PinPlaces
