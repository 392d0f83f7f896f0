/** Words that open a new thought in running speech without punctuation. */

/** A new clause is likely before these. */
export const CLAUSE_OPENERS: ReadonlySet<string> = new Set(
  (
    "okay ok right so now then next don't dont if keep breathe inhale exhale feel let make hands feet knees elbows shoulders hips toes heels " +
    'stand sit lie kneel hold take give come grab put pull push press lift lower bend reach squeeze drive step lean ' +
    "it's its that's thats this you'll youll you're youre you've we're were we'll well i'm im i've i we there's nobody " +
    'eyes head chest chin bum ribs wrists try think imagine pretend slow slowly quick no go only just stop rest ' +
    'remember watch mind use start swap switch change and one two three four five six seven eight nine ten twelve fifteen twenty thirty ' +
    'open close turn twist roll drop raise slide walk tuck point pause wait stay because anyone when as'
  ).split(' '),
)

/** After these a thought goes on, whatever comes. */
export const NEVER_BEFORE_OPENER: ReadonlySet<string> = new Set(
  (
    'and or but to the a an your my our their his her its this that these those of in on at by for with from into onto under over round around behind between ' +
    "if when as until till can could should would will you'll don't dont not never no you i we they it he she is are was were be do did " +
    'have has had want let make keep just only so very too more then one two three four five six seven eight nine ten each every both other same ' +
    "another like than through against about up i'd you'd we'll i'll you're it's that's there's because which who bit little opposite front back left right top bottom"
  ).split(' '),
)

/** A new clause for certain, however short the one before. */
export const STRONG_OPENERS: ReadonlySet<string> = new Set("okay ok alright don't dont now".split(' '))

/** Words in front of a number that bring a name: "drill one", "last one". */
export const NUMBERED: ReadonlySet<string> = new Set([
  'station',
  'drill',
  'exercise',
  'move',
  'number',
  'last',
  'next',
  'first',
])

/** Words right in front of a name that bring it, where no punctuation does. */
export const NAME_OPENERS: ReadonlySet<string> = new Set(
  'okay ok right so now then next first lastly finally up station drill exercise lovely good great alright last'.split(
    ' ',
  ),
)

export const ARTICLES: ReadonlySet<string> = new Set(['the', 'a', 'an', 'our', 'your', 'some'])

/** After these a name is only mentioned. */
export const NEVER_BEFORE_NAME: ReadonlySet<string> = new Set(
  (
    "of in for with from without like than not no don't never isn't is was were are be think when if as do does did doing done want at on to into that this these those about " +
    'love hate miss skip skipping during after before by any each every half both same my his her their or it it’s its he she they you we i stay call called just one'
  ).split(' '),
)

/** Words that open the teaching right behind a name. */
export const WORK_OPENERS: ReadonlySet<string> = new Set(
  (
    'stand sit lie kneel start hands hand feet foot hold grab take place put set get come step bend reach lift lower push pull drive keep find face lean turn arms arm knees elbows shoulders back bell bar band loop wrap ' +
    "so you we it's its that's if don't first go and three four five six eight ten twelve now the this on both one two heels toes legs lying sitting standing from big tall soft breathe in out as okay pop loop lay rest tie grip hang jump hop hinge kick tap rock swing circle draw float drop raise bring send use make sure while keep step let the these we'll do give aim full your long bring right slide squeeze press roll tuck open hook loop anchor same again other please some"
  ).split(' '),
)

/** "This is your pelvic tilt", "next the plank": a new thought even right in front of a name. */
export const POINTERS: ReadonlySet<string> = new Set([
  'this',
  "that's",
  'next',
  'okay',
  'now',
  'right',
  'station',
  'exercise',
  'drill',
])

/** "I don't", "and don't", "right now": these go on even before a strong opener. */
export const STRONG_BOUND: ReadonlySet<string> = new Set(
  'i you we they and but if so right for just by from really please'.split(' '),
)
