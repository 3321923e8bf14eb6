import type { OptionsInWords } from '#core/choice/option.ts'

/**
 * What an owner is told about every choice, under the same headings and at about the same length; tests/content holds
 * both. How each thing is known stands in content/options. Numbers of studies are not repeated here: the odds show them.
 */
export const optionsInEnglish = {
  headings: {
    done: 'What is done',
    good: 'Good side',
    bad: 'Bad side',
    day: 'Your pet’s days',
    work: 'Your work',
    visits: 'Visits',
    money: 'Money',
    wrong: 'What may go wrong',
    unknown: 'What stays unknown',
  },
  year: 'What a year could look like',
  options: {
    'medical-control': {
      name: 'Go on with drops and tablets',
      told: {
        done: 'Drops, tablets and ear washes go on. We look for the cause, such as an allergy, and treat it too. No part of the ear is taken out.',
        good: 'There is no operation. The ear canal stays, with all your pet hears through it. You can still choose another way later.',
        bad: 'It often means care for life. Once the canal has closed or turned to bone, drops cannot reach the sore place.',
        day: 'On most days the ear is held, cleaned or treated. On good days your pet plays and eats as before. In a bad week the ear hurts and itches.',
        work: 'You clean the ear and give drops or tablets, often each day. You watch for a bad smell, a shaking head and pain.',
        visits:
          'We look at the ear again and again through the year, and test what grows in it. A bad week means more visits.',
        money:
          'Each visit, test and bottle is a bill of its own. Over the year they add up, and next year they start again.',
        wrong: 'Germs can get used to the drugs. The canal can close. The illness can go deeper, to the middle ear.',
        unknown:
          'Nobody can say how long this ear can be kept quiet. We found no study that set a life of drops beside an operation.',
      },
    },
    'deep-flush': {
      name: 'A deep ear wash',
      told: {
        done: 'While your pet sleeps, the deep part of the ear is washed out. We look at the canal and the drum and take samples.',
        good: 'There is no cut and the canal stays. We see how deep the illness goes. Drops can reach the skin of the canal again.',
        bad: 'The cause stays, so the ear can fill up again. Nothing can pass through a closed canal.',
        day: 'Your pet comes home the same day or the next, a little sleepy. The ear may be sore for some days. Then days are much as before.',
        work: 'You give drops or tablets for some weeks. You bring your pet back for checks, even when the ear looks well.',
        visits: 'One day with us, then checks until the ear is quiet. Some ears need one more wash within the year.',
        money:
          'One bill for the sleep, the wash and the tests. Then come the bills for drops and checks. A second wash costs the same again.',
        wrong:
          'The drum can tear. The wash, or drops that pass the drum, can upset balance, hearing or the nerves of the face and eye.',
        unknown:
          'We cannot tell before the wash how long the ear will stay quiet. Our list holds no study that counted it.',
      },
      cat: {
        wrong:
          'The drum can tear. In a cat the nerves of balance and of the eye are upset with ease: a tilted head or a small pupil, for days or longer.',
      },
    },
    'lateral-wall-resection': {
      name: 'Open the upper canal to the side',
      told: {
        done: 'The outer wall of the upper canal is cut and folded open, so that air and drops get in. The deep canal and the drum stay.',
        good: 'It is a smaller operation than taking out the canal. Your pet goes on hearing through this ear. The ear is easier to clean.',
        bad: 'It only helps while the lower canal is open and well. What made the ear sick goes on.',
        day: 'A collar day and night for about two weeks. The wound is sore at first. After that, your pet has an open ear that still needs care.',
        work: 'You keep the wound clean and the collar on. Then you go on to clean and treat the ear and the skin, for life.',
        visits:
          'The operation, a look at the wound, and stitches out after about two weeks. Then ear checks through the year.',
        money:
          'One large bill for the operation. Smaller bills for drops and checks go on. If it fails, a larger operation comes on top.',
        wrong:
          'The wound can open. The new opening can grow narrow. The ear can get sick again, and then the whole canal has to come out.',
        unknown: 'From outside, the lower canal is hard to judge. Nobody can promise that it will stay open.',
      },
      dog: {
        bad: 'It only helps while the lower canal is open and well. What made the ear sick goes on. In Cocker Spaniels it mostly fails, even when done early.',
      },
      cat: {
        unknown:
          'From outside, the lower canal is hard to judge. What we know of this operation comes from dogs, and cats may do better or worse.',
      },
    },
    'vertical-canal-ablation': {
      name: 'Take out the upper canal',
      told: {
        done: 'The upper part of the canal is taken out. The lower part is stitched to the skin as a new opening.',
        good: 'The sick upper part is gone. The lower canal and the drum stay, so your pet goes on hearing through this ear.',
        bad: 'It fails when the lower canal or the middle ear is sick too. If we find that during the operation, the whole canal should come out.',
        day: 'A collar day and night for about two weeks. The wound is sore at first. After that, your pet has a small opening that needs care.',
        work: 'You keep the wound clean and the collar on. Then you care for the new opening and for the skin, for life.',
        visits:
          'The operation, a look at the wound, and stitches out after about two weeks. Then checks of the opening through the year.',
        money:
          'One large bill for the operation. Smaller bills for care and checks go on. If it fails, a larger operation comes on top.',
        wrong:
          'The wound can open. The new opening can grow narrow. The lower canal can get sick again. A weak face can happen too.',
        unknown:
          'Often nobody can judge the lower canal before the operation. So we talk with you first about what to do if it is sick.',
      },
    },
    'teca-lbo': {
      name: 'Take out the whole ear canal and clean the middle ear',
      told: {
        done: 'The whole canal is taken out. The bubble of bone behind the drum is opened from the side and cleaned. The skin is closed. The ear flap stays.',
        good: 'The sore canal is gone, and with it the pain that comes from it. That ear needs no more drops.',
        bad: 'The nerve of the face lies close by. The eye may not blink for a time, or for good. Less is heard. It cannot be undone.',
        day: 'The first days are sore, with drugs against pain. A collar for about two weeks. Later, this ear needs no daily care.',
        work: 'Some weeks of tablets, collar and wound care. A weak blink means eye gel many times a day. Later you watch for pain, swelling or a leak.',
        visits:
          'The operation and some days with us. Stitches out after about two weeks. Then we look at face, eye and wound through the year.',
        money:
          'One large bill, with the lab. Skin and other ear cost what they cost now. A deep infection means a new bill.',
        wrong:
          'Bleeding, a wound that opens, a weak face, a dry eye, loss of balance. If lining stays behind, a deep infection can come, even years later.',
        unknown:
          'Nobody can say before the operation which animal will have a weak face, or for how long. How much is still heard is hard to test.',
      },
      cat: {
        bad: 'In cats the nerves of face and eye suffer much more often than in dogs: no blink, or a small eye, for weeks or for good. It cannot be undone.',
      },
    },
    'subtotal-ablation': {
      name: 'Take out most of the canal',
      told: {
        done: 'The upper canal and a part of the lower one are taken out. The deep end, the drum and the middle ear stay.',
        good: 'An ear flap that stands up often keeps its shape. We stay away from the deep nerves.',
        bad: 'What stays can get sick again. It does not help a sick middle ear.',
        day: 'A collar day and night for about two weeks. The wound is sore at first. Later, the skin of the ear still needs care.',
        work: 'You keep the wound clean and the collar on for some weeks. Then you care for the skin of the ear, for life.',
        visits:
          'The operation, a look at the wound, and stitches out after about two weeks. Then checks of the skin and of what stays.',
        money:
          'One large bill for the operation. Then smaller bills for the skin. If what stays gets sick, a second operation comes on top.',
        wrong:
          'The wound can open. The skin of the ear can go on being sick. The part that stays can get sick and have to come out.',
        unknown:
          'What we know comes from one small group, nearly all dogs. Nobody can say how many ears stay quiet for life.',
      },
      cat: {
        unknown:
          'What we know comes from a small group of dogs and one cat. For cats as a whole, nobody knows how it goes.',
      },
    },
    'ventral-bulla-osteotomy': {
      name: 'Open the middle ear from below',
      told: {
        done: 'The bubble of bone behind the drum is opened from the throat side and cleaned. The ear canal stays.',
        good: 'The canal and the ear flap stay as they are. The whole middle ear can be seen and emptied.',
        bad: 'Nerves of the eye and of balance lie inside the bubble and can be hurt. A sick canal stays sick.',
        day: 'The throat side is sore at first, so soft food helps. A tilted head may need time, and help on stairs. Then days are as before.',
        work: 'Some weeks of rest, tablets and care of the wound. You watch how your pet eats, breathes, walks and holds its head.',
        visits:
          'The operation and some days with us. Stitches out after about two weeks. Then we look at eye, face and balance.',
        money: 'One large bill, with the scan and the lab. Care of a sick canal goes on and costs what it costs now.',
        wrong:
          'The eye of that side can look small, the head can tilt, the throat can swell. The illness can come back in the middle ear.',
        unknown:
          'Nobody can say before the operation how long a tilted head or a small eye will last, if it comes at all.',
      },
      cat: {
        good: 'The canal and the ear flap stay as they are. In the cats that were tested, hearing was no worse after it. The root of a polyp can be reached.',
        wrong:
          'In cats the eye often looks small, and the head can tilt, for weeks or for good. The throat can swell and make breathing hard. A polyp can grow again.',
      },
    },
    traction: {
      name: 'Pull out the polyp',
      told: {
        done: 'A polyp is a soft lump on a stalk. While your cat sleeps, it is pulled out through the ear or the mouth.',
        good: 'It is a short treatment, often without a cut. The canal and the middle ear stay as they are.',
        bad: 'The root may stay behind in the middle ear, so the polyp can grow again. It does not clean a full middle ear.',
        day: 'Your cat comes home the same day or the next, a little sleepy. One eye may look small for some weeks. Then days are as before.',
        work: 'You give tablets for a time. Then you watch for the old signs: noise on breathing, a shaking head, or a smell from the ear.',
        visits:
          'One day with us, then one or two checks. If the polyp grows again, there is a new visit and a new plan.',
        money:
          'One bill for the sleep and the treatment, and one for the lab. If the polyp grows again, it costs the same again, or more.',
        wrong:
          'A little blood from the ear. The eye of that side can look small, or the head can tilt, for a time. The polyp can grow again.',
        unknown:
          'Nobody can see whether the root came out as a whole. How much tablets after it help is known from few cats.',
      },
    },
    'no-treatment': {
      name: 'Do not treat the ear',
      told: {
        done: 'The ear is left as it is. No drops, no washes, no operation. We can still treat the pain, and we think we should.',
        good: 'There is no operation and no struggle with drops. You can change your mind on any day.',
        bad: 'A sore ear goes on hurting. Animals hide such pain well. The illness can go deeper and get harder to treat.',
        day: 'Your pet lives with the ear as it is now, or worse. It may play less, shake its head, and not want to be touched there.',
        work: 'You watch for a tilted head, falling, a weak face, or pain on eating. If you see one of them, phone us.',
        visits:
          'A check now and then, to see how much the ear hurts. If it gets worse, there may be visits that nobody planned.',
        money:
          'Little at first: checks, and drugs against pain. If the ear gets worse, care can cost more later than it would now.',
        wrong:
          'The infection can reach the balance, the face, the jaw, and at worst the brain. A tumour that nobody looked for can grow.',
        unknown:
          'Nobody can say how fast this ear will get worse, or how much it hurts today. No study counted ears that nobody treated.',
      },
    },
    euthanasia: {
      name: 'Put to sleep',
      told: {
        done: 'Your pet is put to sleep and dies without pain. We name this because it is one of the choices. We do not press.',
        good: 'It ends pain that nothing else can end. There is no operation and no long time of care.',
        bad: 'It is final. Another way might still have brought good time, and that time is given up.',
        day: 'There is no year to come. Until the day you choose, we treat the pain, so that the last days can be good ones.',
        work: 'You choose the day, and who is there. Nobody must decide this today. Talk with those at home who love your pet.',
        visits: 'One visit, with as much time as you need. You can talk with us before it, and after it too.',
        money: 'One bill for the visit, and one for what is done with the body. We tell you both before you decide.',
        wrong:
          'It can be hard to find a vein, so many pets first get a drug that makes them sleepy. A few breaths can come after death; they do not hurt.',
        unknown:
          'Nobody can know how it would have gone with another choice. You may ask us what speaks for and against each of them.',
      },
    },
    'both-in-one-session': {
      name: 'Both ears on one day',
      told: {
        done: 'Both ears are done while your pet sleeps once. The second ear is only begun if the first went well.',
        good: 'There is one long sleep, one stay with us and one time of healing. Both sore ears are gone at once.',
        bad: 'Your pet sleeps longer. Both sides of the throat can swell, and both eyes can lose their blink at the same time.',
        day: 'The first days are harder than with one ear: both sides are sore, and sounds are dull. Then it all heals at once.',
        work: 'Two wounds and perhaps two eyes need care at the same time, for some weeks. Plan for somebody to be at home.',
        visits: 'One operation and some days with us. Then the same checks as for one ear, for both ears in one visit.',
        money:
          'One very large bill at one time. As a rule it is less than two stays, since the sleep and the stay are paid once.',
        wrong:
          'If the throat swells on both sides, breathing can get hard; a tube in the windpipe may be needed for a time. All that can go wrong with one ear can do so twice.',
        unknown:
          'Dogs of one day and of two days were set side by side in few studies. For pets with a flat face nobody has compared them.',
      },
      cat: {
        wrong:
          'In cats, opening both middle ears from below on one day brought trouble with breathing, and death, more often than one side alone.',
        unknown:
          'For cats we know most about opening the middle ear from below. How both whole canals on one day go in cats was not compared.',
      },
    },
    staged: {
      name: 'One ear first, the other later',
      told: {
        done: 'The worse ear is done first. The other ear follows some weeks later, or not at all if it gets quiet.',
        good: 'Each sleep is shorter. One eye and one side of the throat heal before the other side is touched. You see how the first ear goes.',
        bad: 'There are two sleeps, two stays and two times of healing. The other ear stays sore until its turn.',
        day: 'A sore time and a collar, some better weeks with one sore ear, then a sore time and a collar again.',
        work: 'The care of a wound comes twice. Between the two, you still clean and treat the ear that waits.',
        visits: 'Two operations and two stays, with the checks of each. Over the year this makes more visits.',
        money: 'Two large bills with time between them. As a rule that is more than one stay for both ears.',
        wrong: 'All that can go wrong with a long sleep can go wrong on either day. The ear that waits can get worse.',
        unknown:
          'Nobody can say which wait between the two is best. What the first ear shows may change the plan for the second.',
      },
    },
  },
} as const satisfies OptionsInWords
