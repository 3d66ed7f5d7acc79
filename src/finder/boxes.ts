// Which things a box can hold. WordNet files places, stuff and parts of things with the things that one can hold in the
// hand, and machines and workers with the tools; reviewed by hand.

import { toBases } from '../words/inflect.ts'

/** By reason. A small thing, a toy or a model can stand for what is not here. */
const NOT_IN_A_BOX = {
  'a danger to small children, in the mouth or in the hand': `acorn almond aspirin ax axe balloon barb battery bauble
bead bean berry blackberry blade blueberry bolt bulb bullet button candle candy chainsaw cherry chestnut chisel
cleaver coin cork cranberry crowbar crumb dart firecracker flare fuse gem glass gooseberry grape gum hacksaw hatchet
hickory hook hornet huckleberry jewel jewelry kernel knife lighter lollipop magnet marble match matchbook medication
medicine mousetrap mulberry nail needle nut nutmeg oat olive pea peanut pebble pecan peg pellet pill pin pistachio
popcorn popsicle potion prescription raisin razor saw scissors screw seed sickle skewer sledgehammer snare spear spike
spur staple stone strawberry tablet tack taffy thimble thistle thorn toffee toothpick trinket walnut wasp`,
  'a place or a building': `airfield airline airport aisle alley apartment arcade arena armory attic avenue backyard
bakery balcony bar barbecue base basement bathroom bay bedroom boardroom bookstore building cabinet canal ceiling cell
cellar center centre chapel church cinema circuit circus classroom clinic closet club condo convent corner cornfield
corridor court courtroom dairy dam den diner ditch dock dorm driveway drugstore dwelling embankment embassy entrance
exit facility factory farm field floor fort fountain foyer gallery garage garden garrison grandstand grocery grove gym
hall hallway haven headquarters highway hill hole home hospital hotel inn jail kitchen lab laboratory landing lane
larder laundry library lobby lodging loft lookout lounge mall manor mansion metro mill mine ministry monastery motel
museum nursery office orchard orphanage palace park parlor passage pasture patch path pavement penthouse pharmacy pier
pit platform playground pool porch port post prison quarry railroad railway ranch residence restaurant rink road
roadside roof room route salon school schoolhouse schoolroom sewer shelter shop sidewalk spa spring square stable
stage station steeple store street structure studio subway surface temple terrace theater theatre tower track trail
tunnel university vault villa wall ward warehouse way wayside well yard zoo`,
  'stuff, not one thing': `ash baggage beef beverage blank bran brass brick cargo cattle china chocolate cloth clothes
clothing cocoa coffee cologne concentrate cotton cream crystal darn denim dough draft drug equipment fabric feed flour
freight fudge furniture gear ginger grain grass gravy hardware hay honey housing ice ivy jam jelly juice junk lard
leather lemonade linen load luggage lumber machinery mail makeup meat medicine merchandise milk mint moss oil paint
pepper perfume plating pork prune refuse rice rubber rust rye salt sap satin sauce seafood seaweed sheeting silk soda
spice steel stew stock stuff sugar supper tar tea tin toast toothpaste trash underwear vanilla vegetable velvet virus
wash water waterproof weed wheat wool worsted yeast`,
  'a part or a side of a thing, or how it looks': `arch beading bit bladder blade block bloom blue bottom bower brace
brake buck buttonhole carving channel color counter crank crop crown cure curl cutting deck device doorstep down drain
edge elbow element entry essence facing filler fin finish flank flap footage frame front gap gray green grip handle
heel hem hind hitch hood hoof icing join joint knit knot layer limb limber line link lip mane maple marker mast
matting measure middling model mouthful network notch original outfit overall pack pad padding pale pane part pave
pink pocket point port portal pound prime print rack ray reset rib ribbing rim rudder seal seam seat section shaft
side siding sill skin sleeve slice slick slit slot snug sole spine split stack stair stem stitch strap stretch strip
stump system tail terminal thread total trace trim twist vent verge vine weave web whiting work yolk`,
  'somebody, or what somebody does': `access ace addition adult alarm angler annual appointment art backup band bark
barker bath bender blind block board boarding bolt boom border bounty brat breakfast breather bypass camp chase chat
checker chili chow classic climber cobbler combine complex cook cooper copy courser cover cozy cruiser dandy darter
destroyer dial diet dinner disco dive diver divers draw dress dresser drink dummy dump fake fare fast feast feeler
female fencing fighter filter fisher flip following formation freighter frontal gig giveaway graduate hack harvest
heel hitch hobby holder honesty horror horseback human hunting ignition insert inspiration interstate invention jolly
journal jumper lash launch light local lunch male mankind meal mess mixer mobile mow nanny notion operation overload
ox package patch picket pickup picture piece plant planter plot pointer pony porker porter pose press product pump
punch putter quarrel pronunciation record reel relay release relief repeat representation ruin runner searcher seeker server
setup shipment shoot short shortcut shot shuttle silver sitter slam sleeper slide sling smoker snap spray springer
stake stall stand standby starter stick stray stroke stroll stunt sub subject supporter surgery sweep switch target
tattoo teaser tester tick token trainer transit transport treasure trip trophy trotter try tug video viewer wrap
wrecker young`,
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
