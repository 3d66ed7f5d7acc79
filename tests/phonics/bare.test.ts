// A look-alike that stands alone, first, joined, or before no object, clue by clue, each with a sentence where it holds and one that lacks the
// same thing. Which class a word has in its sentence is common practice, no source: any grammar of English tells as much.

import { describe, expect, it } from 'vitest'
import { findClasses } from '../../src/phonics/heteronyms/evidence.ts'
import { toPlace } from '../../src/phonics/heteronyms/place.ts'
import { isInflected } from '../../src/phonics/heteronyms/types.ts'
import { toBlocks } from './blocks.ts'

const toWords = (text: string): readonly string[] =>
  text.match(/[\p{L}\p{N}]+(?:['’-][\p{L}\p{N}]+)*'?|[^\s\p{L}\p{N}]/gu) ?? []

/** The classes that are left open for the word in stars; `-` where nothing is said. */
function ask(text: string): string {
  const index = toWords(text.slice(0, text.indexOf('*'))).length
  const words = toWords(text.replaceAll('*', ''))
  return findClasses(toPlace(words, index), isInflected(words[index] ?? ''))?.join(' ') ?? '-'
}

const LINES = `
  alone
    noun adjective: “*Present*!”
    noun adjective: “*Permit*?” Tam looked up.
    noun adjective: *Excuses*, excuses!
    noun adjective: Excuses, *excuses*!
    -: “*Object*!”
    -: “*Present* now!”
    noun: Big *present*!
    -: A well-*present*!
    -: Sit-*present*-sit.
  first, with an -s of its own
    noun: *Objects* look bigger in it.
    noun: “*Objects* look bigger,” said Meg.
    -: Sit, *objects* look bigger.
    -: *Objects* the hen sees look bigger.
    -: *Object* look bigger.
    -: *Lives* up there.
    -: *Uses* up milk.
    -: *Records* how it fell.
  an order behind never and please
    verb: Never *abuse* hens.
    verb: Please *use* soap.
    verb: Always *close* the gate.
    -: Never *close* gates.
    verb past: Men never *abuse* hens.
    -: Now never *perfect* hens.
    -: Never *abuses* hens.
    -: Then *abuse* hens.
  behind what is said
    verb: “It is not so!” *protests* Meg.
    verb past: “It is not so!” *protest* the boys.
    verb: "It is not so!" *protests* Meg.
    -: He said, "*protests* Meg.
    noun: “It is not so!” *Protests* came.
    noun adjective: “It is not so!” *protests*.
    -: “It is so” *protests* Meg.
  how often, before one verb
    verb: Being tired never *excuses* being rude.
    verb past: They often *excuse* being rude.
    noun adjective: They were never *presents*.
    -: Never *presents* now.
    -: He gives her cake and sometimes *presents*.
  behind first, and behind a plural that is nearly so
    verb past: First *use* the soap.
    -: First *use* soap.
    verb past: Weather stations *record* the wind.
    -: Weather stations *record* wind.
    -: In stations *record* the wind.
    -: Old weather station *record* the wind.
  a thing that is led by -ing
    noun adjective: We had a singing *contest*.
    noun adjective: She won all the running *contests*.
    noun adjective: It was Tam's building *project*.
    -: We had singing *contest*.
    -: The bird is singing *contest*.
    -: It's singing *contest*.
    -: The singing *contest* a man saw.
    -: The darling *objects* now.
    noun adjective past: We had a sing *contest*.
  behind a past
    noun: He wrapped *presents* all evening.
    noun: Old Meg wrapped *presents* all evening.
    -: Old Meg wrapped *objects* all evening.
    -: Old Meg wrapped *present* all evening.
    verb: He wrapped *presents* the cup.
    -: Hens wrap *presents* all evening.
    past noun adjective: He had *presents* all evening.
  joined things
    noun: Meg buys sweets and *presents* for all.
    noun: Meg buys sweets or *presents*.
    noun: Meg buys sweets, *presents* and games.
    noun: Meg buys sweets, hats, and *presents*.
    -: Meg buys sweets and *objects*.
    -: Meg sings and *presents* now.
    -: Meg can sing and *presents* for all.
    -: Meg buys sweets, *presents* games.
    -: Meg buys sweets and *present* for all.
  what is asked, given, measured or there
    noun adjective: Which *project* did you like?
    noun adjective: What *use* is it?
    noun adjective: What *attributes* does he have?
    noun adjective: What *presents*!
    noun adjective: Are there *presents* in it?
    noun adjective: Have you any *presents* in it?
    noun adjective: Either *project* will do.
    verb past: Either *use* it.
    noun: They gave us *presents*.
    noun: They gave us *presents* now.
    -: The man with us *objects* now.
    -: The man behind us *objects* now.
    verb: What he told us *upsets* him.
    noun adjective: We need more *transport*.
    noun adjective: Some *produce* is old.
    -: We see more *object*.
    -: We need more *transport* now.
    noun adjective: There were price *increases* at the shop.
    -: Here were price *increases* at the shop.
    verb: There was a man who now *objects* at times.
    noun: Let's collect *insults*!
    noun: Let's collect *insults* now!
    noun: We collect *insults* now!
  pointed at, and counted
    noun adjective: Go into that *house* you see.
    noun adjective: They sang of this *record* for long.
    noun adjective: They saw that *house* now.
    -: The dogs that *house* now.
    -: It is that *house* now.
    noun adjective past: Do this *use* well.
    noun adjective: Everybody *present* must stand.
    verb past: They all *present* to the class.
    verb past: The doctors and nurses *use* masks.
    -: It is for sports *use* only.
    verb past: Either *use* it or go.
    noun adjective: We caught 20 *suspects* in it.
    -: Now Class 2 *presents* plays.
    verb: We hope 20 *presents* the play.
    verb past: Many *use* soap.
    -: Many *record* shops sank.
    -: Few *separate* beds.
    -: The few *present* sat.
    -: Most *use* soap.
  will and would, written short
    verb: Mum'll *use* the last egg.
    verb past: I'd *use* a stick.
    verb past: They'd *read* it.
    verb: You needn't *use* it.
    verb: I'm gonna *use* it.
    noun adjective: *Suspect* number one is the cat.
    noun adjective: *Suspect* number 1 is the cat.
    verb past: You two *use* that table.
    -: Now two *use* that table.
    verb: Okay, never *use* mine.
    verb: The press *projects* two beams.
    -: Bus *projects* two weeks long.
  use, first
    verb: *Use* plenty of soap.
    verb: “*Use* plenty of soap.”
    noun: *Use* of it.
    noun: *Use* is new.
    -: *Use*!
    -: Now *use* plenty of soap.
  what somebody had done
    verb: They had him *present* their play.
    -: They had him *present*.
    verb noun adjective: They had her *present* their play.
  described twice
    noun adjective: A big, round *object* lay there.
    noun adjective: It was a small, *intimate* party.
    -: It was small, *intimate* party.
    -: Bus, round *object* lay there.
  behind many, and that or of
    verb past: The dogs that *use* it are old.
    verb past: The men that *use* it are old.
    verb past: The dogs that *use* soap are old.
    noun adjective past: The dog that *use* it is old.
    verb past: All of them *use* it.
    verb past: The birds in the tree *use* it.
    verb past: Big birds in the old tree *use* it.
    -: Saw the birds in the tree *use* it.
    -: The birds in the tree *use* soap.
    -: The bird in the tree *use* it.
  before a helper
    noun: Some other *suspect* must be found.
    -: The tools men *house* must be old.
  before an object that does nothing itself
    verb: Each of them *contests* it.
    verb: The tree *torments* us.
    verb: His sister *abuses* everyone.
    -: Bus *presents* it brings sank.
  what makes her
    noun adjective: She keeps her *presents* in a box.
    verb: He made them *rebel*.
  a kite contest every year
    noun adjective past: Our town has a kite *contest* every year.
    -: They had a man *escort* her.
    noun adjective past: We came with a police *escort*.
    noun adjective: They do *surveys* now.
  what the clause lacks
    verb: Does iron *contract* in the cold?
    verb: Can your voice *project* to me?
    -: Does iron *contract* now that it is cold.
    -: Iron *contract* in the cold?
    noun adjective: Does *progress* matter?
    verb: Do *use* the stairs?
    verb: Nobody is sad when the spy *defects*.
    verb: They laugh if Meg *objects*.
    -: They laugh with the spy *objects*.
    -: They laugh when the spies *objects*.
  what it has already
    noun: They want *projects* now.
    noun: He hates *rebels* now.
    -: What they want *projects* now.
    -: The noise they make *increases* now.
    verb: He always *objects* now.
    verb past: They sing and *record* songs.
    -: They are wet and *content* now.
    verb past: People *import* parrots.
    verb past: Men and women *refuse* food.
    -: Sad old women *refuse* food.
    verb past: People *import*.
    noun adjective: It is of things such as rain, snow and *wind*.
    -: It is of things that rain, snow and *wind*.
  some and others, this and that
    verb past: Some *protest*, others sleep.
    verb past: Some sleep, others *protest*.
    -: Some are cold and some *moderate*.
    -: Some *protest* all day.
    noun adjective: *Insult* after insult flew.
    noun adjective: Bus *insult* by insult flew.
    verb: *Refuse*, and you will be sorry.
    -: *Content*, and you will be sorry.
    -: *Refuse*, and go.
    verb past: They neither *use* nor want it.
    noun adjective: He minds neither *wind* nor rain.
    noun adjective: The boys and girls *present* cheered.
    noun adjective: There were many boys *present* at it.
    noun adjective: With all his friends *present*, he sang.
    -: The boys *present* at noon.
    verb past: He asked when the boys *present* at noon.
    noun adjective past: It makes building a tree *house* fun.
    noun adjective past: They made no fuss about being in a dog *contest*.
    -: It makes a man *house* men.
    noun adjective past: They hate the hidden price *increase*.
    verb: This week Year Two *presents* its play.
    verb: Swimming *conflicts* with the party.
    -: Swimming *contests* with you are fun.
    noun: The nursery *graduates* sang.
    -: The pan Meg *presents* fell.
    noun: We pinned our space *projects* up.
    -: We knew our dog *objects* now.
    -: The boy who lost his turn *protests*.
    -: We are our dog *objects* now.
    verb past: The girls all *present* to the class.
  what only ends as many do
    noun: Everything has its *use*.
    noun adjective adverb past: Grandpa finds *use* for it.
    verb past: The tools farmers *use* are old.
    noun: We needed *transport* to it.
    noun: She wore *perfume* at it.
    verb: They dare *insult* to him.
    -: They try *insult* to him.
    verb past: We each *present* to him.
    verb past: I too *suspect* the crow.
    verb past: You guys *present* to us.
    adjective adverb: I too *content* the crow.
    verb past: What they say they *insult* to him.
  lead of many
    verb past: Herds of elephants in the park *combat* it.
    verb past: Towns along the river *combat* it.
    -: Herds of elephants *combat* snow.
    noun adjective: He bought a box of old *compound* now.
    verb past: Red and orange *contrast* now.
    verb past: Yellow and purple strongly *contrast* now.
    -: It is red and orange *contrast* now.
    verb: One boy nods, the other *objects*.
    noun: The boy nods, the other *objects*.
    verb: Class Two *presents* a play.
  no describing words
    -: I rather *suspect* he forgot.
    -: The geese quite rightly *suspect* Mr Fox.
    adjective adverb: With so *elaborate* a hat he fell.
    adjective adverb: It was quite *close*.
    verb past: They did nothing but *torment* her.
    -: Our school *permits* dogs.
    verb: Being small *excuses* nobody.
    -: Love that is shared *increases*.
    -: Those that *rebel* must flee.
    -: What funny *contrasts* the clowns made!
    noun: With squeals and *protests* the pigs ran.
    noun adjective: Does a snail need any *address*?
    -: Games like this *combine* fun and skill.
    verb: A man on a star *projects* two beams.
  one and many
    noun adjective: Name one *object* that is round.
    noun adjective: Name one *object* now.
    -: That one *present* now.
    noun adjective past: This one *present* now.
    -: Which one *present* now?
    -: Name one *present* the hen had.
    verb past: Many *attribute* the rain to it.
    verb past: People *use* the path.
    -: Some *object* that fell sat.
    -: Many *attribute* rain to it.
    -: Bus *attribute* the rain to it.
  joined under a helper
    verb: We will work at school and *graduate*.
    verb: We want to work and *graduate* in May.
    verb: We will end school, *graduate* and find work.
    verb: We will end school, *graduate*, and find work.
    -: We will see the man and *graduate*.
    -: We work at school and *graduate*.
    -: Will they go? Work and *graduate*.
    verb past: We will work and *graduate* the man.
    -: We will work and *graduate* men.
    -: We will work and *survey*.
    -: We will end school, *graduate* now.
  what the plural of a clause is
    verb past: The tool that men *use* is old.
    -: The tool that men *house* sank.
  a name with a thing of its own
    noun adjective: One day we found Meg's *address* here.
    verb: Did Meg *address* it?
    noun adjective: Did Meg's *address* fit?
  what comes round is no object
    noun adjective: The singing *contest* is old.
    noun adjective: We have a singing *contest* every year.
    -: We have a singing *contest* every frog saw.
`

describe.each(toBlocks(LINES))('$heading', ({ lines }) => {
  it.each(lines)('%s: %s', (expected, asked) => {
    expect(ask(asked)).toBe(expected)
  })
})
