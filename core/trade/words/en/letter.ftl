# letter
