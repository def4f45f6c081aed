"""Certifying: a certificate from what the records show, or what is still missing for it."""

from generator.workflows.certifying.certificates import (
    Page,
    certificate_or_refusal,
    certify_training,
    print_certificate_again,
)

__all__ = ["Page", "certificate_or_refusal", "certify_training", "print_certificate_again"]
