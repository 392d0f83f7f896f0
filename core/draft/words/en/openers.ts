/** Words that open a new thought in running speech without punctuation. */

/** A new clause is likely before these. */
export const CLAUSE_OPENERS: ReadonlySet<string> = new Set(
  (
    "okay ok right so now then next don't dont if keep breathe inhale exhale feel let make hands feet knees elbows shoulders hips toes heels " +
    'stand sit lie kneel hold take give come grab put pull push press lift lower bend reach squeeze drive step lean ' +
    "it's its that's thats this you'll youll you're youre you've we're were we'll well i'm im i've i we there's nobody " +
    'eyes head chest chin back bum ribs wrists try think imagine pretend slow slowly quick no go only just stop rest ' +
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
