/**
 * What instructors say when they warn of each hazard, in the phrase language of `../match-phrase.ts`.
 * A sentence that says one of a hazard's phrases covers it, whatever kind of cue it is.
 * An easier option alone ("step it instead") is no warning and is not listed.
 * Source: the trade's everyday English, written for this product; no list was copied.
 */
import type { HazardSlug } from '../../hazard-slugs.ts'
import type { PhraseGroups } from '../match-phrase.ts'
import { BODY_WORDS } from './hazard-words-body.ts'
import { PEOPLE_WORDS } from './hazard-words-people.ts'
import { WORK_WORDS } from './hazard-words-work.ts'

export const HAZARD_GROUPS: PhraseGroups = {
  no: "don't|do_not|never|no|not|without|avoid|rather_than|instead_of|isn't|aren't|doesn't|shouldn't|mustn't|nobody|try_not_to|careful_not_to",
  if: "if|when|whenever|anyone|anybody|anything|any|should|those_of_you|got|you've|has|have",
  stop: "stop*|ease*|easing|back_off|back_it_off|slow*|rest|sit_down|sit_out|leave|skip|miss|come_out|come_down|come_off|call_it|that's_it|that_is_it|the_end|finish*|put_it_down|done|walk_it_off|step_out|pull_up|lie_down|smaller|less|lighten*|lighter|drop_the|not_for_you|bin_it|park_it|pack_it_in|give_it_a_miss|sit_this_one|sit_these|sit_it_out|swap|shorten|go_back|back_out|finished|that's_you|you're_done|you_are_done|take_a_break|have_a_break|halve|let_go|get_out",
  dizzy:
    "dizz*|light_headed|lightheaded|light_in_the_head|head_goes_light|head_light|giddy|woozy|wobbly_headed|faint*|swimmy|room_spins|room_is_spinning|room_spinning|room_starts_spinning|room_starts_to_spin|room_moves|room's_still|head_spins|head_is_spinning|head_rush|see_stars|seeing_stars|see_spots|go_grey|head_swims|head_swimming|head_is_swimming|head_goes",
  trouble:
    "pain*|pinch*|hurt*|sore*|ache*|aching|achy|grumpy|bad|dodgy|trouble*|troublesome|problem*|injur*|complain*|twinge*|niggl*|click*|clunk*|nip*|catches|catching|unhappy|not_happy|isn't_happy|cranky|moan*|grumbl*|tweak*|stiff|frozen|impingement|doesn't_like|don't_like|sharp|weak|operation|replaced|history|issue*|stings|strain*|bites|jab|jabs|zing*|snag*|grind*|tender|wonky|gammy|dicky|iffy|poorly|surgery|torn|swear*|swearing|barks|barking|shouts|yells|argu*|object*|protest*|whinge*|whine*|growl*|nag*|plays_up|playing_up|acts_up|acting_up|kicks_off|talks_to_you|talking_to_you|isn't_right|not_right|not_keen|isn't_keen|having_none_of_it|isn't_having",
  back: "your_back|your_back's|the_back's|your_spine's|the_back|that_back|my_back|this_back|if_back|low_back|lower_back|upper_back|mid_back|small_of_your_back|spine",
  support:
    'chair|chairs|wall|rail|rails|railing|railings|sideboard|dresser|piano|handrail|hand_rail|handrails|grab_rail|grab_bar|chairback|desk|bed|fence|walker|zimmer|window_sill|counter|worktop|table|sink|frame|banister|bannister|door_frame|doorframe|windowsill|sofa|support|something_solid|something_steady|something_sturdy|something_firm|kitchen_side|barre|ledge',
}

export const HAZARD_WORDS: Readonly<Record<HazardSlug, readonly string[]>> = {
  ...BODY_WORDS,
  ...PEOPLE_WORDS,
  ...WORK_WORDS,
}

/** Words of a sentence that a hazard does not listen to: pain in the chest is no pain of the joint, nor is a leg for which somebody is rung. */
export const UNHEARD: Partial<Record<HazardSlug, RegExp>> = {
  'pain-stop':
    / (?:chest pains?|(?:calf|calfs|calves|leg|legs)\b.*\b(?:ring|rings|phone|ambulance|hospital|gp|doctor)\b.*)(?= |$)/g,
}

/** Breathing out on the effort: covers breath-hold, unless the instructor asks for a held breath or a heavy bar invites one. */
export const EFFORT_BREATH_WORDS = [
  'breathe_out|exhale|blow_out|breath_out|puff_out|hiss_out|sigh_out|blow|breathing_out .. as|on|when|while|to|every|with|each|through|at',
  'out .. as|when .. you .. stand|push|squeeze|lift|press|rise|work|pull|come_up|drive|go_up|extend|curl|raise|straighten',
  'out .. on .. effort|push|lift|squeeze|press|pull|hard|way_up',
  'as_you|when_you .. stand|push|squeeze|lift|press|rise|pull ... breathe_out|exhale|blow_out|breath_out',
] as const

/**
 * Words that make a line hold for the whole class and not for one exercise. "The whole time" and "every rep" do not:
 * said in an exercise, they speak of that exercise.
 */
export const CLASS_WIDE_WORDS = [
  'every|each|all|any .. exercise|exercises|move|moves|movement|movements|station|stations|drill|drills|lift|lifts',
  'any|each|every|everything|anything|none .. of .. these|those|this|it',
  'through .. class|session|workout|lesson',
  'whole|entire .. class|session|workout|lesson|hour',
  'at_any_point|at_any_time|any_time_you|anytime_you|whenever_you',
  'today|tonight|this_morning|this_evening & rule|any|anything|everything|every|always|all|whenever',
  'everything .. here|we_do|today|tonight|in_this',
  "in .. this|today's .. class|session|workout",
  'general_rule|golden_rule|house_rule|house_rules|good_rule|the_rule_here|same_rule|rule_for|rules_for|pain_rule|pain_rules|rule_one|rule_number|first_rule|one_rule|class_rule|the_rule_is',
  'goes|holds|counts|applies .. for|to .. everything|all|every|lot|whole|each|both',
  'every|each|any .. time .. you .. get|take|grab|pick|hang|use|touch|change|move|load|set',
  'for_everything|for_the_lot|all_session|all_class|all_morning|all_evening|the_whole_lot|from_now_on|every_time_you_grab|every_time_you_move|every_time_you_change|each_time_you_change|whatever_we_do|whatever_youre_doing',
  'traffic_light|traffic_lights',
  'every|each|any_one .. one .. of .. these|those',
] as const
