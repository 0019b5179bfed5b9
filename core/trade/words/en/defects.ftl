# defects
