// A usual form is taken in silence only where nothing in the sentence belongs to the rare one: female deer, golf, somebody who sews. And the places
// where a thing looks like a verb, or a verb like a thing. Sentences of our own; common practice, no source.

import { beforeAll, describe, expect, it } from 'vitest'
import { cutWords } from '../../scripts/build/heteronyms/examples.ts'
import { rules } from '../../scripts/build/heteronyms/table.ts'
import { settle } from '../../src/phonics/heteronyms/settle.ts'
import { loadTagger, type Tagger } from '../../src/phonics/heteronyms/tagger.ts'

let tagger: Tagger
beforeAll(async () => {
  tagger = await loadTagger()
})

/** The form that the rules settle for the word in stars; `unsettled` where they are silent. */
function ask(text: string): string {
  const index = cutWords(text.slice(0, text.indexOf('*'))).length
  const answer = settle(rules, cutWords(text.replaceAll('*', '')), index, { tagger })
  return answer.kind === 'settled' ? answer.form : answer.kind
}

describe('the rare form', () => {
  it.each([
    // Does: of deer, and of do.
    ['Stags roar, while *does* listen from the ferns.', 'unsettled'],
    ['Shy *does* fled when the buck snorted.', 'deer'],
    ['The forest ranger says that female deer are called *does*.', 'deer'],
    ['What *does* the deer eat in winter?', 'verb'],
    ['The stag *does* not see us.', 'verb'],
    ['Where *does* Ned keep his stag?', 'verb'],
    ['Nobody knows what it *does*.', 'verb'],
    // Closer: nearer, and what shuts.
    ['Old Ned fitted a new *closer* to the barn door.', 'shut'],
    ['Sid is the *closer* of lids, and Meg opens them.', 'shut'],
    ['The hens came *closer* to the door.', 'near'],
    ['Meg took a *closer* look at the hinge.', 'near'],
    ['Come a bit *closer*.', 'near'],
    // Putting: setting, and hitting a golf ball.
    ['Gran’s caddie says that her *putting* is bad.', 'golf'],
    ['Uncle Ned took us for a round of *putting*.', 'golf'],
    ['Sid stood *putting* with his golf club all morning.', 'unsettled'],
    ['She is *putting* the lid on the pan.', 'place'],
    // Sewer: a drain, and somebody who sews.
    ['The old *sewer* threaded her needle.', 'stitcher'],
    ['Is your aunt a *sewer* or a knitter?', 'stitcher'],
    ['The ball rolled along the *sewer*.', 'drain'],
    ['The young *sewer* lives in Tansy Lane.', 'unsettled'],
    // Number, bowed, nice.
    ['First his ears were cold, and then they were even *number*.', 'numb'],
    ['Number and *number* grew his toes.', 'numb'],
    ['The *number* of frozen ponds is ten.', 'count'],
    ['The shelf was old and *bowed*.', 'legs'],
    ['Her knees were *bowed* like two spoons.', 'legs'],
    ['Sid *bowed* to Old Ned and smiled.', 'bend'],
    ['On our map *Nice* lies by the blue sea.', 'town'],
    ['*Nice* to see you, Meg!', 'kind'],
  ])('%s → %s', (text, form) => {
    expect(ask(text)).toBe(form)
  })
})

// The model, which learned from the judged sentences, may tell these; the rules must not tell the wrong.
describe('behind many of whom more is said', () => {
  it.each([
    'Birds that live in this wood *use* twigs.',
    'People like my mum *use* maps.',
    'Children all around the world *read* books.',
  ])('no thing is seen in silence in %s', (text) => {
    expect(['present', 'unsettled', 'verb']).toContain(ask(text))
  })
})

describe('a place that looks like another', () => {
  it.each([
    // Tiny things, behind a word that tells how they are.
    ['The baby shrew was absolutely *minute*!', 'tiny'],
    ['The eggs were round, white and *minute*.', 'tiny'],
    ['Thin and *minute*, the worm slid off.', 'tiny'],
    ['It took an hour and a *minute*.', 'time'],
    ['Wait one *minute*!', 'time'],
    // To, before what is a thing.
    ['The two knights rode off to *combat*.', 'noun'],
    ['“I challenge you to *combat*!” cried Sir Ned.', 'noun'],
    ['They had to *combat* the slugs.', 'verb'],
    ['Most bats give birth to *live* young.', 'adjective'],
    ['They hope to *live* by the sea.', 'verb'],
    ['In mortal *combat* he lost his shield.', 'noun'],
    // What something is, and whom it is said of.
    ['If a grown-up hurts you, that is *abuse*, and you may tell.', 'noun'],
    ['I cry because *insults* hurt.', 'noun'],
    ['What a *content* little pup you are!', 'happy'],
    ['The last *minute* rush was over.', 'time'],
    ['Another *upset* like that, and I go.', 'noun'],
    ['Sid was *upset* at home.', 'verb'],
    ['His *invalid* mother slept.', 'patient'],
    ['Her ticket was *invalid*.', 'wrong'],
    // What one sells or carries is a thing.
    ['The lorry collects *refuse* on Mondays.', 'noun'],
    ['The cart carries *refuse* to the tip.', 'noun'],
    ['Our shop sells *produce* and bread.', 'noun'],
    ['Meg collects *records* in a box.', 'noun'],
    ['Ned eats *close* to the fire.', 'near'],
    ['Dad gets *upset* on Mondays.', 'verb'],
    ['It was a musical *present* the men brought.', 'noun'],
    ['With squeals and *protests* the pigs were washed.', 'noun'],
    ['The clock, which *records* the time, is old.', 'verb'],
    ['Which *records* are old?', 'noun'],
    ['“Reduce, *reuse*, recycle,” says our song.', 'verb'],
    ['The *reuse* of old jars is good.', 'noun'],
    // Near, at first hand, in front, and low in music.
    ['The bear, holding Meg *close*, hummed a song.', 'near'],
    ['Ned saw her *close* the lid.', 'shut'],
    ['All went after Meg, following her *lead*.', 'guide'],
    ['The show goes *live* at noon.', 'adjective'],
    ['My uncle sings *bass*.', 'music'],
    // Behind something big stands what it does.
    ['Something big *lives* inside that cave.', 'verb'],
    ['Nothing small *uses* that door.', 'verb'],
    ['We lead big *lives* here.', 'noun'],
    ['Will the mill *close* tomorrow?', 'shut'],
    ['I am *used* to early mornings.', 'used-to'],
    ['The mop is *used* to dry the floor.', 'verb'],
    // What was used stands before `had used to`, and `used not to` is a habit that was none.
    ['Meg wiped off the sticky jam he’d *used* to fill the tarts.', 'verb'],
    ['The same spoon that Old Ned had *used* to stir it was lost.', 'verb'],
    ['She wrote down everything they’d *used* to mend it.', 'verb'],
    ['Meg said that she had *used* to be the best at chess.', 'used-to'],
    ['Meg told the cook he’d *used* to climb trees.', 'unsettled'],
    ['It was here that they’d *used* to climb trees.', 'unsettled'],
    ['“I am sure he *used* not to bark at us,” said Ned.', 'used-to'],
    ['They *used* not to, but now they do.', 'used-to'],
    ['A rope is *used* not to pull but to hold.', 'unsettled'],
    ['My legs are not as quick as they *used* be.', 'used-to'],
    ['We *used* go there in May.', 'unsettled'],
    ['“*Used* she to sing?” asked Meg.', 'used-to'],
    ['The gull, *used* to the crowds, stole my bun.', 'used-to'],
    ['He had gold, some of which he *used* to buy a cow.', 'unsettled'],
    ['That was the bun he *used* to give the hens.', 'unsettled'],
    ['The words he *used* to call for help were odd.', 'unsettled'],
    ['Those are the words he *used* to end the song.', 'verb'],
    ['Meg found a belt, which she *used* to tie it up.', 'verb'],
    ['We had a hill, which we *used* to call our ship.', 'unsettled'],
    ['The game we *used* to play is lost.', 'used-to'],
    ['Ned knew the tales his gran *used* to tell him.', 'used-to'],
    ['A tool *used* to dig soil lay there.', 'unsettled'],
    ['A stone *used* to sink at once.', 'used-to'],
    ['The cups *used* to fill the pot were red.', 'unsettled'],
    ['The glue, pins and paint *used* to mend it were gone.', 'unsettled'],
    ['The hens *used* to hide until the sun was up.', 'used-to'],
    ['The ink had been *used* to the end.', 'unsettled'],
    ['Ned must get the foal *used* to the cart.', 'used-to'],
    ['Is your dog *used* to the lead?', 'used-to'],
    ['Get the rope *used* to tie the boat.', 'unsettled'],
    ['Cubs play with the dogs *used* to pull sleds.', 'unsettled'],
    ['The men of the hill *used* to sing.', 'used-to'],
    ['The old men of the hill *used* to dig coal.', 'used-to'],
    // A hole in what is worn, and a drop.
    ['The wind blew in at every *tear* in his clothes.', 'rip'],
    ['She looked at each *tear* in the wall of the hut.', 'rip'],
    ['There was no *tear* in it.', 'unsettled'],
    ['Every *tear* that fell made a pool.', 'eye'],
    // Behind things that belong together, at the end of a clause.
    ['Looking through the old Tansy Lane *records*, she found his name.', 'noun'],
    ['After looking at the mill *records*, Ned went home.', 'noun'],
    ['She looked through the long school *records*.', 'noun'],
    ['Looking up, Ned *records* the time.', 'verb'],
    ['After resting in the barn Ned *records*, and Meg sings.', 'unsettled'],
    ['They are tales, and not *excuses*.', 'noun'],
    ['It is the word people *use* for a small hill.', 'verb'],
    ['A jug has no *use* for hens.', 'noun'],
    ['Nothing *live*!', 'adjective'],
    ['We want plums and not *excuses*.', 'noun'],
    // Many, with more said of them.
    ['People all over the world *use* it.', 'verb'],
    ['Hens all around the yard *record* the time.', 'verb'],
    ['The king and all the court *use* gold cups.', 'verb'],
    ['Those in the tree *house* were dry.', 'noun'],
    ['What a fine tree *house* it is.', 'noun'],
    // Many men are many.
    ['The fishermen *wind* in their lines.', 'turn'],
    ['The firemen *use* a long hose.', 'verb'],
    // A name at the start is no verb, whatever its ending.
    ['Fred *sows* in May.', 'plant'],
    ['Ahmed *uses* with care what he has.', 'verb'],
    // More of one kind.
    ['The singers took three *bows*.', 'bend'],
    ['They took their *bows* and arrows.', 'knot'],
    ['They live quiet, happy *lives* far from town.', 'noun'],
    ['She *lives* far from town.', 'verb'],
    ['Every *moped* in the lane was red.', 'bike'],
    ['Sid *moped* in the yard all day.', 'sulked'],
    ['Who left that *moped* in the barn?', 'bike'],
    ['“Dearly *beloved*, we are all here,” said the vicar.', 'noun'],
    ['She was dearly *beloved* by them all.', 'verb'],
    ['The gull spread its wings, *dove* and caught a fish.', 'dived'],
    ['A wounded *dove* lay under the hedge.', 'bird'],
    ['Ned sharpened the pencil until it had a new *lead*.', 'metal'],
    ['They sat by the fire and *wind* wool.', 'turn'],
    // Joined to its like behind a preposition; a path may run before its place.
    ['With all the air currents and *winds* nothing could fly.', 'air'],
    ['They sailed through the waves and *winds*.', 'air'],
    ['Down the hill turns and *winds* a path.', 'turn'],
  ])('%s → %s', (text, form) => {
    expect(ask(text)).toBe(form)
  })
})

describe('what was taken in silence for the other', () => {
  it.each([
    ['Is there a bigger *number* than ten?', 'count'],
    ['My left foot is *number* than my right one.', 'numb'],
    ['How much will *wind*, sun and rain fade it?', 'air'],
    ['Neither storm nor *wind* could tip the pram.', 'air'],
    ['Into the black *wind* the geese flew.', 'air'],
    ['The Four *Winds* told Tam to go home.', 'air'],
    ['Class Two *presents* a play.', 'verb'],
    ['Sailors find November *winds* cold.', 'air'],
    ['We heard the front door *close*.', 'shut'],
    ['My back teeth *close* when I bite.', 'shut'],
    ['He saw the door slowly *close*.', 'shut'],
    ['The barn stood *close*.', 'near'],
    ['They weren’t even *close*, said Meg.', 'near'],
    ['Ned came home with *bowed* shoulders.', 'bend'],
    ['Zub came to *House* Plum and barked.', 'noun'],
    ['The barn has to *house* ten cows.', 'verb'],
    ['It was fun from *minute* one.', 'time'],
    ['A middle *aged* man fed the hens.', 'verb'],
    ['It is well *read* and torn.', 'past'],
    ['*Separate* yourselves, boys!', 'verb'],
    ['The walls which *separate* Tam and Ned are thin.', 'verb'],
    ['It was a small shed, *separate* from the barn.', 'adjective'],
    ['It was the end of their miserable *lives*.', 'noun'],
    ['As the gap between two carts *increases*, the horse slows down.', 'verb'],
    ['With two of his *presents*, Tam ran home.', 'noun'],
    ['The heaps of snow *decrease* in the sun.', 'verb'],
    ['Watch the queue *increase*.', 'verb'],
    ['Tam is a total toffee *addict*.', 'noun'],
    ['Thank you for the lovely *presents* you sent.', 'noun'],
    ['Dry that crystal *tear*.', 'eye'],
    ['After hugs and *tears* we went home.', 'eye'],
    ['Meg stood a *minute* watching Old Ned.', 'time'],
    ['They rode through hot, dusty *deserts*.', 'sand'],
    ['Tam took his *bow* and three arrows.', 'knot'],
    ['Tam took his *bow* and left the stage.', 'bend'],
    ['My name is Ostur and I *construct* ships.', 'verb'],
    ['It was a song so *elaborate* that Ned forgot it.', 'adjective'],
    ['*Tears*, big and salty, fell on the page.', 'unsettled'],
    ['There were *tears* on the page.', 'eye'],
    ['The wood *used* to build the barn was old.', 'unsettled'],
    ['The flour *used* to make our bread comes from the mill.', 'unsettled'],
    ['The barn *used* to be red.', 'used-to'],
    ['The geese *used* every evening to fly over us.', 'used-to'],
    ['The pump was *used* every evening to fill the pond.', 'verb'],
    ['Meg *used* every spoon to dig.', 'verb'],
    ['The cave is *used* to this day.', 'verb'],
    ['The hens are *used* to this noise.', 'used-to'],
  ])('%s', (text, expected) => {
    expect(ask(text)).toBe(expected)
  })
})

describe('what a boat has, when it was, and what was used for it', () => {
  it.each([
    // The front of a boat, and knots.
    ['The *bows* of the boat hit a rock.', 'bend'],
    ['Tam sat in the *bows* and looked for seals.', 'bend'],
    ['Foam flew from her *bows*.', 'bend'],
    ['Water came over the *bows* and wet Zub.', 'bend'],
    ['The boat had two red *bows* on its mast.', 'knot'],
    ['Meg tied *bows* to the oars.', 'knot'],
    ['They shot with *bows* at the ship.', 'knot'],
    ['The clown bows, and the king *bows* himself out.', 'bend'],
    ['The girls had big *bows*.', 'knot'],
    // A drop, and a hole.
    ['The song brought a *tear* to Gran’s eye.', 'eye'],
    ['Onions bring a *tear* to my eye.', 'eye'],
    ['The nail did a *tear* to his coat.', 'rip'],
    ['There was a *tear* in the sky.', 'rip'],
    // When it was is no object.
    ['Gran gave us *presents* a week ago.', 'noun'],
    ['The boys shouted *insults* a minute ago.', 'noun'],
    ['Gran gave us *presents* the day before.', 'noun'],
    ['They had *contests* the next day.', 'noun'],
    ['He *objects* the next time.', 'verb'],
    ['She *presents* a long show.', 'verb'],
    // What something is for.
    ['Camels are *used* to bring water.', 'verb'],
    ['The hens are *used* to swimming ducks.', 'used-to'],
    ['They kept tools such as spades *used* to dig peat.', 'verb'],
    ['Ned as well as others *used* to dig peat.', 'unsettled'],
    ['Keys are things often *used* to open doors.', 'verb'],
    ['The dogs often *used* to bark at night.', 'used-to'],
    ['It was a long, thin pole *used* to reach apples.', 'verb'],
    ['Long, thin poles *used* to stand by the door.', 'used-to'],
    ['She was a sweet, old hen *used* to a warm nest.', 'used-to'],
    ['The paint *used* to make that sign was red.', 'verb'],
    ['The clock *used* to say that time was short.', 'used-to'],
    ['The dog *used* to chase cats will not run now.', 'unsettled'],
    ['The tin can be *used* to water beans.', 'verb'],
    ['He may be *used* to water by now.', 'used-to'],
    // More than one life, things, sand, and what is holy.
    ['It is good to save human *lives*.', 'noun'],
    ['The cat asked for extra *lives*.', 'noun'],
    ['Pick up sharp metal *objects* so that nobody gets cut.', 'noun'],
    ['They sailed to *Desert* Island.', 'sand'],
    ['It is more *blessed* to give than to get.', 'adjective'],
    ['O ye *blessed* winds, blow!', 'adjective'],
    ['I feared for the very *lives* of us all.', 'noun'],
    ['The king *lives* and dies as we do.', 'verb'],
    ['The dragon *lives* to eat.', 'verb'],
    ['It was all worries and *tears*.', 'eye'],
    // What the class makes it, whose house it is, and a cup at a mouth.
    ['We worked to make the class *project* a success.', 'noun'],
    ['Let’s make our class *project* a big hit!', 'noun'],
    ['Mum made the class *record* a song.', 'verb'],
    ['*House* Mouse’s tail was long.', 'noun'],
    ['*House* Tom’s rabbits in the shed!', 'verb'],
    ['He put the cup to *mouth* and drank.', 'noun'],
    ['Try to *mouth* the words.', 'verb'],
    ['The neighbours’ *row* over a fence went on.', 'quarrel'],
    ['There was a silly *row* over who should go first.', 'quarrel'],
    // How small it is.
    ['The dust was *minute* and grey.', 'tiny'],
    ['It was *minute* but strong.', 'tiny'],
    ['She wore a *minute* hat.', 'tiny'],
    ['It took an hour and a *minute* and no more.', 'time'],
    // What is borne, what was so, and a slip.
    ['The hens are *used* to rain.', 'used-to'],
    ['The mule is *used* to work the mill.', 'verb'],
    ['A kind of bear *used* to exist here.', 'used-to'],
    ['He had a pet mole, whom he *used* to feed.', 'used-to'],
    ['The ducks have grown *used* to it.', 'used-to'],
    ['He was sad, though he *used* to sing.', 'used-to'],
    ['Didn’t your dad *used* to call you Pumpkin?', 'used-to'],
    ['What did the spoon *used* to dig cost?', 'unsettled'],
    ['Mice *used* to actually be as big as cats.', 'used-to'],
    // To a house, and to give a house to.
    ['They ran from house to *house*, asking for buns.', 'noun'],
    ['From shed to *house* is ten steps.', 'noun'],
    ['Go to *house* number six.', 'noun'],
    ['He ran down to *house* four.', 'noun'],
    ['He came to *house* four hens.', 'verb'],
    ['We sailed to *Desert* Rock.', 'sand'],
    ['The walls keep us from having to *house* hens.', 'verb'],
    ['From past to *present* the mill stood.', 'noun'],
    ['How many cows can this barn *house*?', 'verb'],
    ['Does the school *record* still stand?', 'noun'],
    ['Will the shop *close* early today?', 'shut'],
    ['The other *lives* in the sea.', 'verb'],
    ['Old Mr Fox *used* to chase us.', 'used-to'],
    ['My Aunt May *used* to chase us.', 'used-to'],
    ['Tam Hill *used* to chase us.', 'used-to'],
    ['The spade Mr Fox *used* to dig it was red.', 'unsettled'],
    ['The Hill *used* to hum.', 'used-to'],
    ['The other *lives* were saved.', 'noun'],
    ['How many boys can lift the *house*?', 'noun'],
    ['Does your tree *house* leak?', 'noun'],
    ['They made the gingerbread *house* a home.', 'noun'],
    ['The rope can be *used* to some extent.', 'verb'],
  ])('%s → %s', (text, form) => {
    expect(ask(text)).toBe(form)
  })
})
