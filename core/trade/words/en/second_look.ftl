# second look and doorstep
