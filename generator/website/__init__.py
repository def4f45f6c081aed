"""The course as a site: pages are built from a plain `Course`, and MkDocs only writes them out.

Files: course (what a site is made of), site (all pages), lesson_pages, question_pages,
reference_pages, front_pages; prose (Markdown), blocks (what a lesson can ask for), addresses
(links); panel_picture and figures_* (drawings); plugin (the only file that knows MkDocs).
"""
