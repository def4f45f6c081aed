"""Certificates of painter training: what they need, say and number."""

from generator.records.certificates.certificates import (
    Certificate,
    Training,
    all_certificates,
    certificate_of,
    certificates_of,
    certify,
)

__all__ = [
    "Certificate",
    "Training",
    "all_certificates",
    "certificate_of",
    "certificates_of",
    "certify",
]
