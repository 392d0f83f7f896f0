/** What sort of word a word is, for guessing where a sentence ends. A word takes the first class that lists it. */

const words = (list: string): readonly string[] => list.trim().split(/\s+/)

/** Word classes by name, in the order they are tried. */
export const WORD_CLASSES = {
  /** Amounts. */
  number: words(
    'one two three four five six seven eight nine ten eleven twelve thirteen fourteen fifteen sixteen seventeen eighteen nineteen twenty thirty forty fifty sixty seventy eighty ninety hundred half couple few dozen fives tens twelves',
  ),
  /** What is counted or measured. */
  unit: words(
    'second seconds secs minute minutes min mins hour rep reps repetitions set sets round rounds time times breath breaths stroke strokes cycle cycles metre metres meter meters length lengths percent degrees kilo kilos pounds goes trips once twice',
  ),
  /** Belongs to the noun behind it. */
  article: words(
    'the a an your our my his her their its this that these those some any each every both another per no',
  ),
  /** Belongs to what is behind it. */
  preposition: words(
    'of in on at by for with from into onto under over round around behind between across against about through toward towards without like than per near beside above below inside outside during after before along past off to up down back out away',
  ),
  /** Joins. */
  and: words('and or but then'),
  /** Opens a clause that hangs on another. */
  because: words('if when while until till because as so unless once since where which who that whether'),
  /** Who does it. */
  pronoun: words('i you we they he she it nobody everybody everyone anyone somebody someone one'),
  /** A pronoun grown together with its verb. */
  contraction: words(
    "i'm i'll i'd i've you're you'll you'd you've we're we'll we'd we've they're they'll it's it'll that's that'll there's here's he's she's what's who's let's im ill id ive youre youll youd youve were well wed weve theyre thats theres heres lets",
  ),
  /** To be, to have, may and must. */
  auxiliary: words(
    "is are was be been being am has have had do does did will would can could should might may must isn't aren't wasn't doesn't didn't won't can't couldn't shouldn't need want wants going gonna",
  ),
  /** Tells not to. */
  never: words("don't dont never not avoid"),
  /** Opens a new thought by itself. */
  opener: words(
    'okay ok right alright now next first second third fourth last lastly finally good great lovely nice brilliant perfect excellent beautiful amazing cool super yeah yes hello hi hey welcome morning evening please anyway well rest go ready done',
  ),
  /** How. */
  manner: words(
    'slowly gently slow quick quickly fast hard easy easily again together apart here there just only really very too bit little more less all still even nearly almost maybe always straight flat tall long wide soft heavy light high low',
  ),
  part: words(
    'head neck chin eyes face jaw shoulder shoulders blade blades arm arms elbow elbows forearm forearms wrist wrists hand hands palm palms finger fingers thumb thumbs fist fists chest breastbone rib ribs belly tummy stomach waist core spine tailbone pelvis hip hips bum bottom butt glute glutes thigh thighs hamstring hamstrings quad quads leg legs knee knees shin shins calf calves ankle ankles feet foot heel heels toe toes sole body trunk torso weight gaze',
  ),
  kit: words(
    'bell bells kettlebell kettlebells dumbbell dumbbells weights bar barbell plate band bands loop ring rings strap straps handle handles rope chair seat bench box step wall door mat floor cushion pillow bolster blanket block towel belt ball rower machine rack stick',
  ),
  /** Verbs as told to a class. */
  verb: words(
    'lift lower push pull press bend straighten curl reach return squeeze rotate turn twist raise drop drive swing slide roll open close extend hinge tuck tilt draw bring send kick tap float jump hop land hug peel sink fold tip lean shift flex circle row squat lunge walk march run snap zip punch hike rise catch spread shrug thread rock sweep step pause hold keep stay stand sit lie kneel lay start begin set place put grab take get come find wrap hook anchor rest position breathe inhale exhale feel imagine think try stop relax swap switch change repeat look watch check mind let make use give add aim move lengthen soften brace engage tighten dig grip lead point cross melt release pick pop tie stick shuffle scoot pinch stretch build finish wait show do bounce pretend notice count',
  ),
} as const satisfies Record<string, readonly string[]>
