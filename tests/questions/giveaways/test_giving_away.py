"""What counts as giving an answer away, on small made-up questions."""

import pytest

from generator.questions.giveaways import Asked, PaperText, giveaways

# questions that share few words, so that the words of a pair under test weigh something
CROWD = tuple(
    PaperText(f"crowd/{n}", f"crowd/{n}", facts=(f"Item{n} about thing{n} with part{n}",))
    for n in range(400)
)


def pairs(*texts):
    return [(found.question, found.gives_away) for found in giveaways((*texts, *CROWD))]


def question(name, key, topic, wrong=(), **more):
    facts = more.pop("facts", (topic,))
    return PaperText(name, name, (Asked(key, topic, tuple(wrong)),), facts, **more)


CAPTURE = question(
    "capture",
    "98 %",
    "Exhaust filters must catch a share of the mist. How much at least?",
    wrong=("90 %", "95 %"),
)


def test_a_number_with_its_unit_in_another_stem_gives_it_away():
    told = PaperText("told", "told", facts=("A new filter catches 98 % by its test paper.",))
    assert pairs(CAPTURE, told) == [("told", "capture")]


def test_a_number_in_a_wrong_option_gives_it_away_as_well():
    told = PaperText(
        "told", "told", facts=("Filters leave a gap.",), wrong=("The mist filters catch 98 %",)
    )
    assert pairs(CAPTURE, told) == [("told", "capture")]


@pytest.mark.parametrize(
    "fact",
    [
        "A new filter catches 90 % by its test paper.",
        "A new filter catches most of the mist.",
        "The booth stands at 98 °C when filters are changed.",
    ],
)
def test_another_number_gives_nothing_away(fact):
    assert pairs(CAPTURE, PaperText("told", "told", facts=(fact,))) == []


GOGGLES = question(
    "goggles",
    "Goggles and the gloves that the safety sheet names",
    "What has to be on before the hardener tube is opened?",
    wrong=("A cap and ear plugs", "Cotton gloves"),
)


def test_words_of_the_key_on_the_same_topic_give_it_away_in_any_of_their_forms():
    told = PaperText(
        "told", "told", facts=("Put on goggles and gloves by the safety sheet, and open the tube.",)
    )
    assert pairs(GOGGLES, told) == [("told", "goggles")]


def test_the_same_words_about_another_topic_give_nothing_away():
    told = PaperText("told", "told", facts=("Goggles, gloves, safety sheet: which is on a shelf?",))
    assert pairs(GOGGLES, told) == []


def test_a_text_that_fits_a_wrong_option_as_well_gives_nothing_away():
    asked = question("putty", "Two-part putty", "Pinholes in filler", wrong=("Lacquer putty",))
    both = "Pinholes in filler: two-part putty or lacquer putty"
    assert pairs(asked, PaperText("told", "told", facts=(both,))) == []
    one = "Pinholes in filler are closed with two-part putty"
    assert pairs(asked, PaperText("told", "told", facts=(one,))) == [("told", "putty")]


def test_questions_of_one_record_are_left_out():
    told = PaperText("told", "goggles", facts=("Goggles, gloves, safety sheet, hardener tube.",))
    assert pairs(GOGGLES, told) == []


def test_what_many_texts_show_is_told_only_by_one_that_states_it():
    plain = PaperText("step", "step", (Asked("Rinse the soap away", "Wash a door", plain=True),))
    shown = PaperText("shown", "shown", shown=("Rinse the soap away", "Wash a door"))
    stated = PaperText("fact", "fact", facts=("Rinse the soap away from a door you wash",))
    assert pairs(plain, shown, stated) == [("fact", "step")]


WASH = ("Rinse the grit off", "Wash with soap", "Dry the gaps", "Degrease the door")


def order(name, *steps):
    return PaperText(name, name, shown=steps, orders=tuple(zip(steps, steps[1:], strict=False)))


def test_two_that_want_the_same_order_give_each_other_away():
    other = order("other", "Rinse loose grit off", "Wash it with soap", "Dry the panel gaps")
    assert pairs(order("wash", *WASH), other) == [("other", "wash"), ("wash", "other")]


def test_one_pair_in_common_is_not_the_same_order():
    other = order("other", "Wash with soap", "Dry the gaps", "Polish the hood")
    assert pairs(order("wash", *WASH), other) == []


def test_a_text_that_says_which_of_two_steps_is_first_gives_the_order_away():
    told = PaperText("told", "told", facts=("You wash with soap before you dry the gaps.",))
    silent = PaperText("silent", "silent", facts=("Wash with soap; dry the gaps.",))
    assert pairs(order("wash", *WASH), told, silent) == [("told", "wash")]


def test_the_words_that_do_it_are_told_as_the_key_has_them():
    told = PaperText("told", "told", facts=("A new filter catches 98 % by its test paper.",))
    (found,) = giveaways((CAPTURE, told, *CROWD))
    assert found.words == ("98 %",)


def test_the_same_texts_give_the_same_list_in_any_order():
    told = PaperText("told", "told", facts=("A new filter catches 98 % by its test paper.",))
    texts = (CAPTURE, GOGGLES, told, order("wash", *WASH), *CROWD)
    assert giveaways(texts) == giveaways(tuple(reversed(texts)))
