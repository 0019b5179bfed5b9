### The program on a computer: its commands and its page.
