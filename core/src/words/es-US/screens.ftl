### Screens: headings, labels and lines of the screens.
