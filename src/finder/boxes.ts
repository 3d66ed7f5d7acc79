// Which things a box can hold. WordNet files places, stuff and parts of things with the things that one can hold in the
// hand, and machines and workers with the tools; reviewed by hand.

import { toBases } from '../words/inflect.ts'

/** By reason. A small thing, a toy or a model can stand for what is not here. */
const NOT_IN_A_BOX = {
  'a danger to small children, in the mouth or in the hand': `acorn aspirin ax axe balloon battery bead bean berry blade bulb bullet button candle candy cherry dart
firecracker fuse glass grape gum hatchet knife magnet marble match medicine nail needle nut pea peanut pebble peg pill pin popcorn raisin razor saw
scissors screw seed sickle spear spike stone tablet tack thorn toothpick`,
  'a place or a building': `aisle airfield airport alley apartment attic avenue backyard bakery balcony bar barbecue base basement bay bathroom bedroom
building cabinet canal ceiling cell cellar center centre chapel church circuit circus classroom clinic closet club corner court courtroom dairy den
ditch diner dock dorm driveway dwelling embassy entrance exit facility factory farm field floor fountain gallery garage garden grandstand grocery
grove gym hall hallway haven headquarters highway hill hole home hospital hotel inn jail kitchen laboratory lab landing lane larder laundry library lobby
lodging lookout lounge mall mansion mill mine motel museum nursery office orchard palace park passage pasture patch path pavement pier pit platform
playground porch port post prison railroad railway ranch residence restaurant rink road roadside roof room route school schoolhouse schoolroom sewer shop sidewalk
stable stage station steeple store street structure studio subway surface temple theater theatre tower track trail tunnel vault wall ward warehouse
wayside yard zoo`,
  'stuff, not one thing': `ash beef blank bran brass brick cargo cattle china clothing concentrate cotton cream crystal darn dough draft equipment feed flour freight fudge
furniture gear grain grass gravy hardware hay honey housing ice jam jelly juice junk lard leather linen load luggage lumber machinery mail makeup meat medicine milk
mint oil paint pepper plating pork prune refuse rubber rust rye salt sap satin sauce sheeting silk soda steel stew stock stuff sugar supper tar tea
trash underwear vegetable velvet virus wash water waterproof weed wheat wool worsted`,
  'a part or a side of a thing, or how it looks': `beading bit blade block bloom blue bottom bower brake carving color crank crop crown curl cutting cure deck down drain
edge element entry facing filler finish flap footage frame front gray green grip handle heel hem hind hitch hood join joint knot knit limb limber line link lip
maple mane marker matting measure middling model network notch original outfit pack pad padding pale part pave pink pocket point port prime print pound
ribbing rim seal seam seat section skin side siding slice slick slit snug sole split stem stack stitch strap stretch strip stump system tail terminal
thread total trace trim twist web weave whiting work`,
  'somebody, or what somebody does': `access addition adult alarm angler annual appointment art backup band bark barker bath bender blind block board boarding bolt boom
border bounty breakfast breather brat camp chase checker chili chow climber cobbler complex cook cooper courser cover cozy cruiser dandy darter destroyer diet dinner dive
diver divers dresser dummy dump fake fare fast feast feeler female fencing fighter fisher flip following freighter gig graduate hack harvest heel hitch hobby holder honesty
horror human hunting insert inspiration journal jolly jumper lash launch light lunch male mankind meal mess mixer mobile mow nanny package patch picket picture piece
pickup plant planter plot pointer pony porter porker pose press product pump punch putter reading record release relief repeat ruin runner searcher seeker server setup shipment
shoot shot silver sitter slam sleeper slide sling smoker snap spray springer stake stall stand starter stick stroke stunt subject
supporter surgery sweep switch target tattoo teaser tester tick tug trainer transport treasure trophy trotter try video viewer wrap wrecker`,
} as const

const NOT: ReadonlySet<string> = new Set(Object.values(NOT_IN_A_BOX).flatMap((words) => words.split(/\s+/)))

/** Things whose names look like those of tools or workers, and that a box can hold; the others of that kind are none. */
const TOOLS: ReadonlySet<string> = new Set(
  `banner bumper burger butter clipper cooker copper counter cracker curler cutter digger dipper dropper duster eraser flower grater hammer hanger icing
ladder layer letter lever locker marker peeler pitcher poster pudding roller ruler saucer scooter scraper shaver shutter slipper sprinkler sticker
stocking sweater timer toaster trailer tumbler zipper`.split(/\s+/),
)

/** @param isWord tells a word, so that a tool or worker named after another word is found: `washer`, `sander` */
export function isForBox(word: string, isWord: (word: string) => boolean): boolean {
  if (TOOLS.has(word)) return true
  if (NOT.has(word)) return false
  if (/ing$/.test(word) && word.length > 5) return false
  return !(
    /er$/.test(word) && toBases(word).some(({ base, inflection }) => inflection === 'comparative' && isWord(base))
  )
}
