"""What is said about a set of papers: repeats, overlap, evenness."""

from fractions import Fraction

import pytest

from generator.assembly.search.balance import Balance, balance_of, mean_overlap
from generator.assembly.search.candidate_pool import Candidate, Demand, pool_of
from generator.assembly.search.search import search


def exposure_variance(uses, forms):
    shares = [Fraction(count, forms) for count in uses]
    mean = sum(shares, Fraction(0)) / len(shares)
    return sum(((share - mean) ** 2 for share in shares), Fraction(0)) / len(shares)


@pytest.mark.parametrize(
    ("uses", "variance", "large", "exact"),
    [
        ((4, 4, 3, 3, 2, 2, 1, 1, 0, 0), 0.125, 0.75, 0.666667),
        ((2,) * 10, 0.0, 0.5, 0.333333),
    ],
)
def test_overlap_follows_from_exposure(uses, variance, large, exact):
    # Chen, Ankenmann and Spray 2003: overlap from mean and variance of exposure; ten questions,
    # four papers of five
    spread = exposure_variance(uses, 4)
    assert float(spread) == variance
    assert float(Fraction(10, 5) * spread + Fraction(5, 10)) == large
    assert float(mean_overlap(uses, 5, 4)) == pytest.approx(exact, abs=5e-7)


def test_overlap_is_the_mean_over_all_pairs_of_papers():
    candidates = tuple(Candidate(str(n), str(n), (0,)) for n in range(9))
    papers = search(pool_of(candidates, 1), Demand((4,), 5), "overlap")
    held = [set(papers.chosen(form)) for form in range(5)]
    shared = [len(a & b) for i, a in enumerate(held) for b in held[:i]]
    balance = balance_of(papers)
    assert balance.overlap == Fraction(sum(shared), 4 * len(shared))
    assert balance.most_shared == max(shared)


def test_one_paper_overlaps_with_nothing():
    candidates = tuple(Candidate(str(n), str(n), (0,)) for n in range(9))
    balance = balance_of(search(pool_of(candidates, 1), Demand((4,), 1), "one"))
    assert balance.overlap == 0
    assert balance.most_shared == 0


def said(overlap=Fraction(0), most_shared=0, met_again=0):
    halves = (Fraction(1, 2), Fraction(3, 5))
    minutes = (Fraction(20), Fraction(43, 2))
    balance = Balance(0, 0, overlap, most_shared, halves, minutes, met_again)
    return balance.in_words(80, 30)


def test_the_words_give_expected_result_and_time_beside_those_of_the_plan():
    assert said() == (
        "An average apprentice should score about 50 to 60 % (pass 80 %) in 20 to 22 of 30 minutes."
    )


def test_the_words_say_how_much_two_papers_share_and_what_is_met_again():
    assert said(Fraction(1, 4), 9).endswith(
        "Two of these papers share 25 % of their questions on average, 9 at most."
    )
    assert said(met_again=1).endswith("Once a person meets a question again.")
    assert said(met_again=3).endswith("3 times a person meets a question again.")
