import type { LateralFacts } from '#core/plate/facts.ts'
import { drawn } from './provenance.ts'

/** Left ear of a cat: the same order of structures; short vertical canal, smaller meatus, a bulla that fills the space to the atlas. */
export const catLateral = {
  wall: { value: 15, ...drawn },
  lines: {
    flapErect: {
      value: '448,436 428,389 424,326 446,254 486,186 524,143 548,191 578,263 594,335 588,400 566,436',
      ...drawn,
    },
    flapDrop: {
      value: '448,436 408,398 372,335 362,263 384,195 440,152 510,139 578,155 626,202 640,272 622,344 594,404 566,436',
      ...drawn,
    },
    flapStump: { value: '448,436 432,398 426,355 462,344 512,355 556,342 596,351 588,400 566,436', ...drawn },
    opening: { value: '438,422 466,394 512,386 552,396 572,424 556,450 504,466 456,452', ...drawn },
    tragus: { value: '446,442 474,458 504,466 536,460 552,450 546,482 504,496 460,482', ...drawn },
    antitragus: { value: '556,434 574,430 592,442 588,468 570,480 550,470', ...drawn },
    verticalLeft: { value: '436,430 438,468 432,509 426,549 430,588 456,608 480,612', ...drawn },
    verticalRight: { value: '572,430 562,468 548,509 534,549 526,588 504,608 480,612', ...drawn },
    meatus: { value: '478,585', ...drawn },
    foramen: { value: '548,580', ...drawn },
    ridge: { value: '528,556 534,582 528,608', ...drawn },
    nerve: { value: '548,580 552,616 528,648 480,662 424,662 370,656', ...drawn },
    nerveToLids: { value: '424,662 398,620 384,572 368,510 340,456 290,412 226,380', ...drawn },
    nerveBuccalUpper: { value: '370,656 290,638 182,620', ...drawn },
    nerveBuccalLower: { value: '370,656 306,690 240,710 182,722', ...drawn },
    nerveCaudal: { value: '548,580 586,556 626,524 660,484', ...drawn },
    veinForamen: { value: '414,590', ...drawn },
    vein: { value: '414,590 408,632 412,690 428,742 444,780', ...drawn },
    jawJoint: { value: '316,566 340,546 372,548 398,564 394,588 360,600 324,594', ...drawn },
    jaw: {
      value: '296,436 326,440 346,490 356,560 360,620 366,690 340,776 280,826 176,848 176,716 250,690 288,620 300,540',
      ...drawn,
    },
    bulla: { value: '396,692 408,638 446,607 511,605 575,634 608,690 588,746 507,780 434,757', ...drawn },
    bullaCut: { value: '446,664 446,634 478,626 530,632 572,654 584,698 558,738 500,752 458,728', ...drawn },
    leaveAlone: { value: '402,690 408,648 432,624 446,634 446,664 458,728 428,742', ...drawn },
    parotid: {
      value:
        '396,480 412,540 436,594 480,632 530,600 566,544 592,484 626,556 612,660 570,742 512,798 446,786 402,706 380,600',
      ...drawn,
    },
    carotid: { value: '580,930 536,836 478,776 420,722 390,688', ...drawn },
    maxillaryArtery: { value: '390,688 342,652 292,624', ...drawn },
    templeArtery: { value: '390,688 384,640 392,560 396,480 388,400 374,340', ...drawn },
    flapArtery: { value: '536,836 594,724 634,610 646,480 636,420 612,371 584,290 560,218', ...drawn },
    digastric: {
      value: '636,700 664,712 656,752 590,806 500,852 400,880 300,892 256,872 300,850 420,822 530,772 600,716',
      ...drawn,
    },
    hypoglossal: { value: '640,786 580,836 500,866 390,892 270,884', ...drawn },
    jugular: { value: '444,780 500,824 560,890 606,960', ...drawn },
    atlas: { value: '724,620 780,590 838,612 852,662 820,724 768,742 728,706', ...drawn },
    cutBar: { value: '420,422 460,400 506,392 552,402 588,426', ...drawn },
    cutStem: { value: '504,394 502,461 490,534 480,632', ...drawn },
    cutCircle: { value: '424,422 458,384 510,374 562,386 588,424 570,466 504,504 444,474', ...drawn },
    scarCircle: { value: '430,436 464,426 508,424 552,430 584,440', ...drawn },
  },
} as const satisfies LateralFacts
