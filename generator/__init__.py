"""Guidecoat: a training course and self-check quiz generator for vehicle refinishing."""
